package org.espalier.prognosis;

import java.util.List;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Diagnosis;
import org.espalier.patient.Fact;
import org.espalier.patient.Onset;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Side;

/**
 * Why a limb is bent in the groups whose rates are known. What has no group of its own, and a limb without diagnosis,
 * counts as idiopathic of its direction; the forecast says so.
 *
 * @param isStudied whether the diagnosis is one of those groups
 */
record Causes(Cause cause, boolean isStudied) {

    private static final Age LATE_ONSET = Age.ofYears(4);

    static Causes of(List<Fact<Diagnosis>> standing, Side side, Deformity deformity) {
        return standing.reversed().stream()
                .map(Fact::finding)
                .filter(diagnosis -> diagnosis != null && isOn(diagnosis.sides(), side))
                .findFirst()
                .map(diagnosis -> of(diagnosis, deformity))
                .orElseGet(() -> new Causes(idiopathic(deformity), false));
    }

    private static Causes of(Diagnosis diagnosis, Deformity deformity) {
        return switch (diagnosis.kind()) {
            case TIBIA_VARA -> new Causes(tibiaVara(diagnosis), true);
            case IDIOPATHIC_VALGUS, IDIOPATHIC_VARUS -> new Causes(idiopathic(deformity), true);
            case SKELETAL_DYSPLASIA -> new Causes(Cause.SKELETAL_DYSPLASIA, true);
            case RICKETS_NUTRITIONAL, RICKETS_HYPOPHOSPHATAEMIC, RICKETS_OTHER -> new Causes(Cause.RICKETS, true);
            default -> new Causes(idiopathic(deformity), false);
        };
    }

    private static Cause tibiaVara(Diagnosis diagnosis) {
        var onset = diagnosis.onset();
        if (onset == null) {
            var age = diagnosis.onsetAge();
            return age != null && age.compareTo(LATE_ONSET) >= 0
                    ? Cause.LATE_ONSET_TIBIA_VARA
                    : Cause.INFANTILE_TIBIA_VARA;
        }
        return onset == Onset.EARLY || onset == Onset.INFANTILE
                ? Cause.INFANTILE_TIBIA_VARA
                : Cause.LATE_ONSET_TIBIA_VARA;
    }

    private static Cause idiopathic(Deformity deformity) {
        return deformity == Deformity.VARUS ? Cause.IDIOPATHIC_VARUS : Cause.IDIOPATHIC_VALGUS;
    }

    private static boolean isOn(AffectedSides sides, Side side) {
        return sides == AffectedSides.BOTH || sides.name().equals(side.name());
    }
}
