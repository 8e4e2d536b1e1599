package org.espalier.patient;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * What was found by hand and eye at one visit. Every part is null or empty when it was not recorded.
 *
 * @param intercondylar between the knees with the ankles touching, 0 to 400 mm
 * @param intermalleolar between the ankles with the knees touching, 0 to 400 mm
 * @param hypermobility 0 to 9 of the nine-point score
 * @param note at most {@link #NOTE_LENGTH} characters
 */
public record ClinicalExamination(
        LocalDate on,
        @Nullable Length intercondylar,
        @Nullable Length intermalleolar,
        LegExamination right,
        LegExamination left,
        @Nullable Integer hypermobility,
        @Nullable SleepSymptoms sleep,
        @Nullable String note)
        implements Finding {

    /** The longest note that is kept. */
    public static final int NOTE_LENGTH = 1000;

    /** The widest gap between knees or ankles that is taken. */
    public static final Length WIDEST_GAP = Length.ofMillimetres(400);

    /** The highest score of hypermobility. */
    public static final int HIGHEST_SCORE = 9;

    public ClinicalExamination {
        note = note == null || note.isBlank() ? null : note.strip();
        demandGap(intercondylar);
        demandGap(intermalleolar);
        if (hypermobility != null && (hypermobility < 0 || hypermobility > HIGHEST_SCORE)) {
            throw new IllegalArgumentException("The score of hypermobility is 0 to 9, not " + hypermobility);
        }
        if (note != null && note.length() > NOTE_LENGTH) {
            throw new IllegalArgumentException("Longer than " + NOTE_LENGTH + " characters");
        }
        boolean legs = !right.isEmpty() || !left.isEmpty();
        boolean whole = intercondylar != null || intermalleolar != null || hypermobility != null || sleep != null;
        if (!legs && !whole && note == null) {
            throw new IllegalArgumentException("Nothing was recorded");
        }
    }

    /** What was found on the leg of the side. */
    public LegExamination leg(Side side) {
        return side == Side.RIGHT ? right : left;
    }

    /** The gap between the knees; empty when it was not recorded. */
    public Optional<Length> gapOfKnees() {
        return Optional.ofNullable(intercondylar);
    }

    /** The gap between the ankles; empty when it was not recorded. */
    public Optional<Length> gapOfAnkles() {
        return Optional.ofNullable(intermalleolar);
    }

    private static void demandGap(@Nullable Length gap) {
        if (gap != null && (gap.millimetres() < 0 || gap.compareTo(WIDEST_GAP) > 0)) {
            throw new IllegalArgumentException("A gap lies between 0 and 400 mm, not at " + gap.millimetres());
        }
    }
}
