package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.patient.Examination;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Treatment;

/**
 * A child's prognosis with what could be done at each knee, and the facts it is reckoned from.
 *
 * @param films the numbers of the films that count
 * @param limbs those whose knee is followed, the right first
 */
public record Ahead(
        Prognosis prognosis, Examination examination, Treatment treatment, FilmNumbers films, List<LimbAhead> limbs) {

    public Ahead {
        limbs = List.copyOf(limbs);
    }

    public LocalDate today() {
        return prognosis.today();
    }

    public Optional<LimbAhead> limb(Side side) {
        return limbs.stream().filter(one -> one.side() == side).findFirst();
    }
}
