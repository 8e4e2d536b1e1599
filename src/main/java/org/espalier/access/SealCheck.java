package org.espalier.access;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What came of computing all seals of the access log again.
 *
 * @param seals how many there are
 * @param broken the first that does not hold; null when all hold
 */
public record SealCheck(Instant at, long seals, @Nullable Broken broken) {

    /**
     * A seal that does not hold.
     *
     * @param rowsThen how many entries it was set over
     * @param rowsNow how many are there now
     * @param from time of the first of them, null when none is left
     * @param until time of the last
     */
    public record Broken(
            long seal,
            long rowsThen,
            long rowsNow,
            @Nullable Instant from,
            @Nullable Instant until) {}
}
