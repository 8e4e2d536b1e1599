package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.science.quantity.Age;
import org.jspecify.annotations.Nullable;

/**
 * What is the matter, on which side, and when it began.
 *
 * @param onset of tibia vara, and of it alone; null when not known
 * @param onsetAge in whole months; null when not known
 * @param note required for {@link DiagnosisKind#OTHER}
 */
public record Diagnosis(
        LocalDate on,
        DiagnosisKind kind,
        AffectedSides sides,
        @Nullable Onset onset,
        @Nullable Age onsetAge,
        @Nullable String note)
        implements Finding {

    /** The longest note that is kept. */
    public static final int NOTE_LENGTH = 400;

    public Diagnosis {
        note = note == null || note.isBlank() ? null : note.strip();
        if (kind == DiagnosisKind.OTHER && note == null) {
            throw new IllegalArgumentException("A diagnosis that is not in the list is said in the note");
        }
        if (note != null && note.length() > NOTE_LENGTH) {
            throw new IllegalArgumentException("Longer than " + NOTE_LENGTH + " characters");
        }
        if (onset != null && !kind.hasOnset()) {
            throw new IllegalArgumentException(kind + " has no groups of onset");
        }
        if (onset != null && onsetAge != null && !onset.includes(onsetAge)) {
            throw new IllegalArgumentException("An onset at " + onsetAge + " is not " + onset);
        }
    }
}
