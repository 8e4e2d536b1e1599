package org.espalier.cost;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;

/**
 * A price with the days it holds for.
 *
 * @param until the day from which it holds no longer; empty while it has no end
 * @param replaced whether another took its place from its first day on, so that it holds for no day
 */
public record Tariff(TariffId id, SiteId site, TariffData data, Optional<LocalDate> until, boolean replaced) {

    public boolean holdsOn(LocalDate day) {
        return !replaced
                && !day.isBefore(data.from())
                && until.filter(end -> !day.isBefore(end)).isEmpty();
    }
}
