package org.espalier.treatment;

import java.time.LocalDate;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * A complication in a scheme of five grades.
 *
 * <p>Source of the scheme: Sink et al., Clin Orthop Relat Res 2012;470:2220 (adapted to orthopaedics; from memory).
 *
 * @param procedure after which it arose; null when not recorded
 * @param side null when not recorded
 */
public record Complication(
        LocalDate on,
        Kind kind,
        Grade grade,
        @Nullable ProcedureId procedure,
        @Nullable Side side,
        @Nullable String note)
        implements TreatmentFact {

    /** What went wrong. */
    public enum Kind {
        STIFFNESS,
        INFECTION,
        NERVE,
        COMPARTMENT,
        NEW_BAR,
        /** A device incident. */
        DEVICE,
        OTHER
    }

    /** How grave. */
    public enum Grade {
        /** No treatment, no deviation from routine. */
        I,
        /** Treatment without operation or admission. */
        II,
        /** An operation or an admission that was not planned, or a long stay. */
        III,
        /** Life or limb in danger, or lasting disability. */
        IV,
        /** Death. */
        V
    }

    public Complication {
        note = Written.tidy(note, REMARK_LENGTH);
        if (kind == Kind.OTHER && note == null) {
            throw new IllegalArgumentException("A complication that is not in the list is said in the note");
        }
    }
}
