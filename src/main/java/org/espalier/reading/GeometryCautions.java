package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.reading.ReadNumber.Absence;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Measured;
import org.espalier.science.alignment.Quantity;

/** What in the landmarks of one limb contradicts itself, told by the line to look at. */
final class GeometryCautions {

    private GeometryCautions() {}

    static List<Caution> of(LimbNumbers limb) {
        var cautions = new ArrayList<Caution>();
        var exchanged = quantitiesWithout(limb, Absence.ENDS_EXCHANGED).stream()
                .map(GeometryCautions::lineOf)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        exchanged.forEach(line -> cautions.add(Caution.ofLimb(Caution.Kind.ENDS_EXCHANGED, limb.side(), line)));
        if (!quantitiesWithout(limb, Absence.LATERAL_UNCLEAR).isEmpty()) {
            cautions.add(Caution.ofLimb(Caution.Kind.LATERAL_UNCLEAR, limb.side()));
        }
        if (!quantitiesWithout(limb, Absence.POINTS_COINCIDE).isEmpty()) {
            cautions.add(Caution.ofLimb(Caution.Kind.POINTS_COINCIDE, limb.side()));
        }
        return cautions;
    }

    private static List<Quantity> quantitiesWithout(LimbNumbers limb, Absence why) {
        return limb.outcomes().entrySet().stream()
                .filter(outcome -> outcome.getValue() instanceof Measured.Absent(var reason, var landmarks)
                        && Absence.of(reason) == why)
                .map(outcome -> outcome.getKey())
                .toList();
    }

    /** The line whose ends a quantity names; empty where another quantity points to it better. */
    private static Optional<JointLine> lineOf(Quantity quantity) {
        return switch (quantity) {
            case MLDFA, ALDFA -> Optional.of(JointLine.CONDYLES);
            case MMPTA -> Optional.of(JointLine.PLATEAU);
            case LDTA -> Optional.of(JointLine.PLAFOND);
            case LPFA -> Optional.of(JointLine.TROCHANTER);
            case MDA -> Optional.of(JointLine.TIBIA_BEAKS);
            case FMDA -> Optional.of(JointLine.FEMUR_BEAKS);
            case FEMUR_PHYSIS_ANGLE -> Optional.of(JointLine.FEMUR_PHYSIS);
            case TIBIA_PHYSIS_ANGLE -> Optional.of(JointLine.TIBIA_PHYSIS);
            default -> Optional.empty();
        };
    }
}
