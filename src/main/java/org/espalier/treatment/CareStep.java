package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * Care of a limb ends, is handed over, or is taken up again.
 *
 * @param side null for both limbs
 * @param whyEnded present exactly when it ends
 */
public record CareStep(
        LocalDate on,
        @Nullable Side side,
        Step step,
        @Nullable EndReason whyEnded,
        @Nullable String note) implements TreatmentFact {

    /** What happens to care. */
    public enum Step {
        ENDED,
        TRANSFERRED,
        TAKEN_UP
    }

    /** Why care ends. A death ends every letter at once. */
    public enum EndReason {
        STRAIGHT,
        ADULT_CARE,
        LEFT_NETWORK,
        DECLINED,
        DIED
    }

    public CareStep {
        if ((step == Step.ENDED) != (whyEnded != null)) {
            throw new IllegalArgumentException("Care ends for a reason, and nothing else has one: " + step);
        }
        note = Written.tidy(note, REMARK_LENGTH);
    }

    boolean isOf(Side limb) {
        return side == null || side == limb;
    }
}
