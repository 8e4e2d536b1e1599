package org.espalier.prognosis;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.science.forecast.CentreRates;

/**
 * The rates forecasts of a site are made by.
 *
 * @param learnt which ones of the centre's own; empty for the published ones
 */
public record UsedRates(CentreRates rates, Optional<Learnt> learnt) {

    /**
     * Rates learnt from a centre's own limbs.
     *
     * @param limbs how many
     */
    public record Learnt(UUID id, int limbs, Instant at) {}

    static UsedRates published() {
        return new UsedRates(CentreRates.published(), Optional.empty());
    }
}
