package org.espalier.reading;

import java.util.Optional;
import org.espalier.film.Film;
import org.espalier.patient.PatientService;
import org.espalier.science.quantity.Age;
import org.springframework.stereotype.Component;

/** How old the child was on a film: what is normal depends on it. */
@Component
class FilmAges {

    private final PatientService patients;

    FilmAges(PatientService patients) {
        this.patients = patients;
    }

    /** Empty while the film has no child or no day, and for a film dated before birth. */
    Optional<Age> on(Film film) {
        return film.child().flatMap(child -> film.takenOn().flatMap(day -> patients.ageOn(child, day)));
    }
}
