package org.espalier.reading;

import java.util.List;
import org.espalier.film.Film;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Component;

/** Looks up what is known of the child on a film. */
@Component
class ChildrenOnFilms {

    private final PatientService patients;
    private final EarlierNumbers numbers;

    ChildrenOnFilms(PatientService patients, EarlierNumbers numbers) {
        this.patients = patients;
        this.numbers = numbers;
    }

    /** Nothing of age and earlier films while the film has no child or no day. */
    ChildOnFilm on(Film film) {
        return film.child()
                .map(child -> new ChildOnFilm(
                        film.takenOn().flatMap(day -> patients.ageOn(child, day)),
                        patients.sex(child),
                        film.takenOn()
                                .map(day -> numbers.before(film.site(), child, day))
                                .orElse(List.of())))
                .orElse(ChildOnFilm.UNKNOWN);
    }
}
