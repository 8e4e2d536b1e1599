package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/** Both physes of one knee with what could be done there. */
public record LimbAhead(Side side, PhysisAhead femur, PhysisAhead tibia) {

    private static final double[] SHOWN = {0.05, 0.25, 0.5, 0.75, 0.95};

    /** Whether a plate turns one of its bones. */
    public boolean isHeld() {
        return Stream.of(femur, tibia)
                .anyMatch(physis -> physis.forecast(PhysisStep.AS_IT_IS).isPresent());
    }

    /** Whether a bone lies beyond reader error of its target. */
    public boolean isBent() {
        return femur.left().isPresent() || tibia.left().isPresent();
    }

    /** Bony HKA, mLDFA less mMPTA, + varus, on a day from today on; empty until both bones were read. */
    public Optional<AngleSpread> bonyHka(PhysisStep atFemur, PhysisStep atTibia, LocalDate day) {
        return femur.joint(atFemur, day)
                .flatMap(upper -> tibia.joint(atTibia, day).map(upper::minus))
                .map(spread -> AngleSpread.of(spread.quantiles(SHOWN)));
    }

    /** Bony HKA by the last film of each bone, + varus. */
    public Optional<Angle> bonyHkaRead() {
        return femur.last().flatMap(upper -> tibia.last().map(lower -> new Angle(upper.value() - lower.value())));
    }
}
