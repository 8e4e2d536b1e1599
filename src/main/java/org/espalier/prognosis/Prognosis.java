package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.patient.Child;
import org.espalier.science.growth.GrowthAge;
import org.espalier.science.growth.Maturity;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;

/**
 * Where a child's limbs are going, by the facts of today.
 *
 * @param age the age growth is reckoned by; empty when the sex is not known
 * @param maturity the end of growth with its spread; empty likewise
 * @param physes those that are followed, the right first
 * @param limbs those of which a bone is being turned
 * @param natural the young limbs that nothing holds or held
 * @param lengths the difference of leg lengths; empty without a film that shows both legs to scale
 * @param early of tibia vara that began early, while nothing holds it
 */
public record Prognosis(
        Child child,
        LocalDate today,
        UsedRates rates,
        Optional<GrowthAge> age,
        Optional<Maturity> maturity,
        List<PhysisPrognosis> physes,
        List<LimbOutlook> limbs,
        List<NaturalOutlook> natural,
        Optional<LengthOutlook> lengths,
        Optional<EarlyDecision> early) {

    public Prognosis {
        physes = List.copyOf(physes);
        limbs = List.copyOf(limbs);
        natural = List.copyOf(natural);
    }

    public Optional<PhysisPrognosis> physis(PhysisKey key) {
        return physes.stream().filter(one -> one.physis().equals(key)).findFirst();
    }

    public Optional<LimbOutlook> limb(Side side) {
        return limbs.stream().filter(one -> one.side() == side).findFirst();
    }

    public Optional<NaturalOutlook> natural(Side side) {
        return natural.stream().filter(one -> one.side() == side).findFirst();
    }
}
