package org.espalier.prognosis;

import java.util.List;
import java.util.Optional;

/**
 * What a page about a centre's rates shows.
 *
 * @param used those forecasts are made by now
 * @param learnt its own, the newest first
 * @param choices the newest first
 */
public record RatesOfSite(UsedRates used, List<LearntRates> learnt, List<RatesChoice> choices) {

    public RatesOfSite {
        learnt = List.copyOf(learnt);
        choices = List.copyOf(choices);
    }

    /** Whose rates are meant to be used; without own ones the published ones stand in. */
    public RateSource chosen() {
        return RatesChoice.isOwn(choices) ? RateSource.OWN : RateSource.PUBLISHED;
    }

    public Optional<LearntRates> newest() {
        return learnt.stream().findFirst();
    }
}
