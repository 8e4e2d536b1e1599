package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was seen of an implant, on a film or in theatre.
 *
 * @param toldOn of a retained fragment: when the family was told; null while they were not
 */
public record ImplantFinding(
        LocalDate on,
        ImplantId implant,
        Part part,
        Seen seen,
        @Nullable LocalDate toldOn,
        @Nullable String note) implements TreatmentFact {

    /** What of the implant. */
    public enum Part {
        METAPHYSEAL_SCREW,
        EPIPHYSEAL_SCREW,
        /** The plate, the staple, the wire itself. */
        BODY;

        /** The screw that it is; empty for what is none. */
        Optional<Screw> screw() {
            return switch (this) {
                case METAPHYSEAL_SCREW -> Optional.of(Screw.METAPHYSEAL);
                case EPIPHYSEAL_SCREW -> Optional.of(Screw.EPIPHYSEAL);
                case BODY -> Optional.empty();
            };
        }
    }

    /** How it was found. */
    public enum Seen {
        SOUND,
        EXPOSED,
        BENT,
        LOOSE,
        BROKEN,
        FRAGMENT_RETAINED
    }

    public ImplantFinding {
        if (toldOn != null && seen != Seen.FRAGMENT_RETAINED) {
            throw new IllegalArgumentException("The family is told of a retained fragment, not of " + seen);
        }
        note = Written.tidy(note, REMARK_LENGTH);
    }
}
