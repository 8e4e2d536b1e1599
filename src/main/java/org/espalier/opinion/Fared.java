package org.espalier.opinion;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a piece of the caller's own advice fared.
 *
 * @param place where, in their own words; may be empty
 * @param due when, in their own words; may be empty
 * @param outcomes what came of it as far as it is known, each horizon at most once
 */
public record Fared(
        ThreadId thread,
        Advice advice,
        String place,
        String due,
        Sureness sure,
        Instant givenAt,
        Advice decided,
        List<Outcome> outcomes) {

    public Fared {
        outcomes = List.copyOf(outcomes);
    }

    /** What came of it at a horizon. */
    public Optional<Outcome> at(Outcome.Horizon horizon) {
        return outcomes.stream().filter(one -> one.horizon() == horizon).findFirst();
    }

    /** The same advice with one outcome more. */
    Fared with(Outcome outcome) {
        var all = new ArrayList<>(outcomes);
        all.add(outcome);
        return new Fared(thread, advice, place, due, sure, givenAt, decided, all);
    }
}
