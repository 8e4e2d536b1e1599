package org.espalier.prognosis;

import java.util.Optional;
import org.espalier.film.FilmService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.reading.ReadingService;
import org.espalier.treatment.TreatmentService;
import org.springframework.stereotype.Component;

/** Gathers what is on record about a child. */
@Component
class FactReader {

    private final ExaminationService examinations;
    private final TreatmentService treatments;
    private final FilmService films;
    private final ReadingService readings;

    FactReader(
            ExaminationService examinations, TreatmentService treatments, FilmService films, ReadingService readings) {
        this.examinations = examinations;
        this.treatments = treatments;
        this.films = films;
        this.readings = readings;
    }

    /** Empty when there is no such child that the caller may see. */
    Optional<ChildFacts> of(ChildId id) {
        var examination = examinations.of(id);
        return examination.child().map(child -> {
            var treatment = treatments.of(id);
            return new ChildFacts(child, treatment.today(), examination, treatment, numbers(child));
        });
    }

    private FilmNumbers numbers(Child child) {
        return FilmNumbers.of(films.of(child.id()), readings.ofChild(child.site(), child.id()));
    }
}
