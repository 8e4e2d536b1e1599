package org.espalier.prognosis;

import java.util.List;
import java.util.Optional;
import org.espalier.film.Film;
import org.espalier.patient.Child;
import org.espalier.patient.Examination;
import org.espalier.reading.Reading;
import org.espalier.treatment.Treatment;
import org.springframework.stereotype.Component;

/**
 * The prognosis of a child with a plate in, by facts that the caller has read already; it reads the centre's rates
 * alone.
 */
@Component
public class PlatesInCourse {

    private final RatesInUse rates;

    PlatesInCourse(RatesInUse rates) {
        this.rates = rates;
    }

    /** Empty when nothing holds a physis. */
    public Optional<Prognosis> of(
            Child child, Examination examination, Treatment treatment, List<Film> films, List<Reading> readings) {
        if (treatment.tethersIn().isEmpty()) {
            return Optional.empty();
        }
        var facts = new ChildFacts(child, treatment.today(), examination, treatment, FilmNumbers.of(films, readings));
        return Optional.of(new Reckoning(facts, rates.of(child.site())).prognosis());
    }
}
