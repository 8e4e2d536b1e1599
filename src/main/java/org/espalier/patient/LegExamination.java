package org.espalier.patient;

import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Angle;

/**
 * What was found on one leg. What is not in it was not recorded, and is not taken for normal.
 *
 * @param angles whole degrees within the limits of each
 * @param signs answered each by one of its own answers
 */
public record LegExamination(Map<LegAngle, Angle> angles, Map<LegSign, LegAnswer> signs) {

    /** Nothing recorded. */
    public static final LegExamination NOT_RECORDED = new LegExamination(Map.of(), Map.of());

    public LegExamination {
        angles = Map.copyOf(angles);
        signs = Map.copyOf(signs);
        angles.forEach((what, angle) -> {
            if (!what.isPlausible(angle)) {
                throw new IllegalArgumentException(what + " lies between " + what.least() + " and " + what.most()
                        + " whole degrees, not at " + angle.degrees());
            }
        });
        signs.forEach((sign, answer) -> {
            if (!sign.answers().contains(answer)) {
                throw new IllegalArgumentException(sign + " is not answered by " + answer);
            }
        });
    }

    /** The angle; empty when it was not recorded. */
    public Optional<Angle> angle(LegAngle what) {
        return Optional.ofNullable(angles.get(what));
    }

    /** The answer; empty when it was not recorded. */
    public Optional<LegAnswer> answer(LegSign sign) {
        return Optional.ofNullable(signs.get(sign));
    }

    public boolean isEmpty() {
        return angles.isEmpty() && signs.isEmpty();
    }
}
