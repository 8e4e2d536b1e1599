package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * A physis seen closed.
 *
 * @param on the day of the film
 * @param reader who read it, by name
 * @param retainedToldOn what is in stays, and the family was told on that day
 * @param removeBy what is in comes out by that day
 */
public record Maturity(
        LocalDate on,
        Side side,
        Bone bone,
        BoneEnd end,
        String reader,
        @Nullable LocalDate retainedToldOn,
        @Nullable LocalDate removeBy)
        implements TreatmentFact {

    /** The longest name that is kept. */
    public static final int NAME_LENGTH = 120;

    public Maturity {
        reader = Written.required(reader, NAME_LENGTH);
        if (retainedToldOn != null && removeBy != null) {
            throw new IllegalArgumentException("What is in stays or comes out, not both");
        }
    }

    public PhysisKey physis() {
        return new PhysisKey(side, bone, end);
    }

    boolean settlesImplants() {
        return retainedToldOn != null || removeBy != null;
    }
}
