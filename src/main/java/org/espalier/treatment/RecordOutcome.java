package org.espalier.treatment;

import java.util.List;

/** What comes of recording. */
public sealed interface RecordOutcome {

    /** Kept now, or already by an earlier try with the same id. */
    record Recorded() implements RecordOutcome {}

    /** Nothing is kept. */
    record Stopped(List<Stop> stops) implements RecordOutcome {

        public Stopped {
            stops = List.copyOf(stops);
        }
    }

    default boolean isRecorded() {
        return this instanceof Recorded;
    }

    static RecordOutcome of(List<Stop> stops) {
        return stops.isEmpty() ? new Recorded() : new Stopped(stops);
    }
}
