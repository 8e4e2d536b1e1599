package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is recorded of a treatment on one day: all that was done in one anaesthetic, or in one visit to the cast room.
 *
 * @param elsewhere done at another hospital, or before this record began
 * @param surgeon who operated, by name; null when not recorded
 * @param note null when nothing is added
 * @param measured how long it took by the clock, as far as that was recorded
 */
public record ProcedureData(
        LocalDate on,
        boolean elsewhere,
        @Nullable String surgeon,
        @Nullable String note,
        MeasuredMinutes measured,
        List<Act> acts,
        NextLook next) {

    /** The longest note that is kept. */
    public static final int NOTE_LENGTH = 2000;

    /** The longest name that is kept. */
    public static final int NAME_LENGTH = 120;

    public ProcedureData {
        acts = List.copyOf(acts);
        if (acts.isEmpty()) {
            throw new IllegalArgumentException("Nothing was done");
        }
        if (next.date().isBefore(on)) {
            throw new IllegalArgumentException("The next visit comes after the procedure, not on " + next.date());
        }
        surgeon = Written.tidy(surgeon, NAME_LENGTH);
        note = Written.tidy(note, NOTE_LENGTH);
    }

    /** Of which nobody recorded how long it took. */
    public ProcedureData(
            LocalDate on,
            boolean elsewhere,
            @Nullable String surgeon,
            @Nullable String note,
            List<Act> acts,
            NextLook next) {
        this(on, elsewhere, surgeon, note, MeasuredMinutes.NONE, acts, next);
    }

    public ProcedureData withMeasured(MeasuredMinutes other) {
        return new ProcedureData(on, elsewhere, surgeon, note, other, acts, next);
    }

    ProcedureData withActs(List<Act> others) {
        return new ProcedureData(on, elsewhere, surgeon, note, measured, others, next);
    }
}
