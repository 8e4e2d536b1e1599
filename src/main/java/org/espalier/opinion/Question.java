package org.espalier.opinion;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is asked.
 *
 * @param text 10 to 4000 characters, naming nobody
 * @param wanted at least one
 * @param place of the plate or the cut that is thought of; null when none is
 * @param dueBy by when an answer helps
 * @param theatreWaitWeeks how long theatre is waited for; null when not known
 * @param consent who agreed to it, and when
 */
public record Question(
        String text,
        List<Advice> wanted,
        @Nullable String place,
        LocalDate dueBy,
        boolean hasFrame,
        boolean hasMri,
        @Nullable Integer theatreWaitWeeks,
        String consent) {

    /** The longest question and the longest message that are kept. */
    public static final int LENGTH = 4000;

    private static final int SHORTEST = 10;
    private static final int SHORTEST_CONSENT = 3;

    public Question {
        text = text.strip();
        place = place == null || place.isBlank() ? null : place.strip();
        consent = consent.strip();
        wanted = List.copyOf(wanted);
        if (text.length() < SHORTEST || text.length() > LENGTH) {
            throw new IllegalArgumentException("A question has 10 to 4000 characters, not " + text.length());
        }
        if (wanted.isEmpty()) {
            throw new IllegalArgumentException("Nothing is asked");
        }
        if (consent.length() < SHORTEST_CONSENT) {
            throw new IllegalArgumentException("Nobody agreed");
        }
    }
}
