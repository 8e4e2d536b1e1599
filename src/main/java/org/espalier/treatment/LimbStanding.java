package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import org.espalier.science.quantity.Side;

/**
 * Where one limb stands.
 *
 * @param state the most urgent state of its physes
 * @param conditions what is said of it besides, and since when
 * @param ended why care ended, when it did
 * @param target as signed for the limb; empty while the default, straight, holds
 */
public record LimbStanding(
        Side side,
        PhysisState state,
        Map<LimbCondition, LocalDate> conditions,
        Optional<CareStep.EndReason> ended,
        Optional<Target> target) {

    public LimbStanding {
        conditions = Map.copyOf(conditions);
    }

    /** Whether the house still follows it: neither mature nor ended. */
    public boolean isInCare() {
        return state != PhysisState.MATURE && !conditions.containsKey(LimbCondition.ENDED);
    }
}
