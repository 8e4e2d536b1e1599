package org.espalier.patient;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Whether a disease of bone was under control from a day on.
 *
 * @param on since when
 */
public record BoneDisease(
        LocalDate on, Control control, @Nullable String note) implements Finding {

    /** How the disease stands. */
    public enum Control {
        CONTROLLED,
        NOT_CONTROLLED
    }

    /** The longest note that is kept. */
    public static final int NOTE_LENGTH = 400;

    public BoneDisease {
        note = note == null || note.isBlank() ? null : note.strip();
        if (note != null && note.length() > NOTE_LENGTH) {
            throw new IllegalArgumentException("Longer than " + NOTE_LENGTH + " characters");
        }
    }
}
