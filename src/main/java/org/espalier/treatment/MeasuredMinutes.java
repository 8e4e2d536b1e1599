package org.espalier.treatment;

import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How long an operation took by the clock.
 *
 * @param theatre minutes in theatre, from the child's coming in to its going out; null when not recorded
 * @param anaesthesia minutes under anaesthesia, from its start to its end; null when not recorded
 */
public record MeasuredMinutes(
        @Nullable Integer theatre, @Nullable Integer anaesthesia) {

    /** Longer than a day is a slip of the pen. */
    public static final int MOST = 1440;

    public static final MeasuredMinutes NONE = new MeasuredMinutes(null, null);

    public MeasuredMinutes {
        Stream.of(new @Nullable Integer[] {theatre, anaesthesia})
                .filter(minutes -> minutes != null && !isPossible(minutes))
                .forEach(minutes -> {
                    throw new IllegalArgumentException("Not how long an operation takes: " + minutes + " min");
                });
    }

    public static boolean isPossible(int minutes) {
        return minutes >= 1 && minutes <= MOST;
    }

    public boolean isRecorded() {
        return theatre != null || anaesthesia != null;
    }
}
