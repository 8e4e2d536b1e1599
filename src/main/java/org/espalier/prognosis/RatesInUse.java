package org.espalier.prognosis;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.springframework.stereotype.Component;

/** By which rates a site forecasts now: its own once it learnt any, unless it chose the published ones. */
@Component
class RatesInUse {

    private final JdbcRatesRepository rates;

    RatesInUse(JdbcRatesRepository rates) {
        this.rates = rates;
    }

    UsedRates of(SiteId site) {
        boolean own = RatesChoice.isOwn(rates.choices(site));
        return own ? rates.newest(site).map(RatesInUse::used).orElseGet(UsedRates::published) : UsedRates.published();
    }

    private static UsedRates used(LearntRates newest) {
        var learnt = new UsedRates.Learnt(newest.id(), newest.rates().limbs(), newest.at());
        return new UsedRates(newest.rates(), Optional.of(learnt));
    }
}
