package org.espalier.prognosis;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Reckoning.KeptInputs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** Makes the forecasts of a child anew and keeps those that are new. Twice is the same as once. */
@Component
class Renewal {

    private static final Logger LOG = LoggerFactory.getLogger(Renewal.class);

    private final FactReader facts;
    private final RatesInUse rates;
    private final JdbcForecastRepository forecasts;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Renewal(
            FactReader facts,
            RatesInUse rates,
            JdbcForecastRepository forecasts,
            ApplicationEventPublisher events,
            Clock clock) {
        this.facts = facts;
        this.rates = rates;
        this.forecasts = forecasts;
        this.events = events;
        this.clock = clock;
    }

    /** Renews one child's forecasts by the rates its site uses now. */
    @Transactional
    public void renew(SiteId site, ChildId child) {
        renew(site, child, rates.of(site));
    }

    /** Renews one child's forecasts by the given rates. */
    @Transactional
    public void renew(SiteId site, ChildId child, UsedRates used) {
        List<KeptInputs> fresh = facts.of(child).map(read -> plates(read, used)).orElse(List.of()).stream()
                .filter(made -> !forecasts.isKept(child, made))
                .toList();
        var at = clock.instant().truncatedTo(ChronoUnit.MICROS);
        fresh.forEach(made -> outcome(child, made, used).ifPresent(said -> forecasts.add(child, made, said, at)));
        if (!fresh.isEmpty()) {
            events.publishEvent(new ForecastsRenewed(child, site));
        }
    }

    /** Facts of which no sense can be made are told to the house and hold up nobody else. */
    private static List<KeptInputs> plates(ChildFacts read, UsedRates used) {
        try {
            return new Reckoning(read, used).plates();
        } catch (IllegalArgumentException e) {
            LOG.error("No forecast of child {}", read.child().id().value(), e);
            return List.of();
        }
    }

    private static Optional<KeptOutcome> outcome(ChildId child, KeptInputs made, UsedRates used) {
        try {
            return Optional.of(KeptOutcome.of(Forecast.of(made.inputs(), true, made.ratesOf(used))));
        } catch (IllegalArgumentException e) {
            LOG.error("No forecast of {} of child {}", made.physis(), child.value(), e);
            return Optional.empty();
        }
    }
}
