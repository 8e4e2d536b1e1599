package org.espalier.reading;

import java.util.List;
import org.espalier.kit.Texts;

/** What comes of a question from the film room. */
public sealed interface MeasureOutcome {

    /** There is no such draft. */
    static MeasureOutcome gone() {
        return new Gone();
    }

    /** The draft has moved on elsewhere. */
    static MeasureOutcome conflict(long revision, Marks marks) {
        return new Conflict(Texts.text("reading.conflict"), revision, marks.points(), marks.edges());
    }

    /** The numbers, and the draft's revision now. */
    record Answered(MeasureAnswer answer) implements MeasureOutcome {}

    /** The draft has moved on elsewhere: what it holds now, for the reader to choose. */
    record Conflict(String message, long revision, List<PlacedPoint> points, List<EdgePoints> edges)
            implements MeasureOutcome {

        static Conflict of(ReadingDraft newer) {
            return new Conflict(
                    Texts.text("reading.conflict"),
                    newer.revision(),
                    newer.marks().points(),
                    newer.marks().edges());
        }
    }

    /** There is no such draft of the caller: signed, discarded, or not theirs. */
    record Gone(String message) implements MeasureOutcome {

        Gone() {
            this(Texts.of(SignOutcome.Reason.NO_DRAFT));
        }
    }
}
