package org.espalier.prognosis;

import java.time.Instant;
import java.util.List;

/**
 * By which rates a centre forecasts.
 *
 * @param by who chose, by name
 */
public record RatesChoice(RateSource source, String reason, String by, Instant at) {

    /** Whether a centre forecasts by its own rates: unless the newest choice is another. */
    static boolean isOwn(List<RatesChoice> newestFirst) {
        return newestFirst.isEmpty() || newestFirst.getFirst().source() == RateSource.OWN;
    }
}
