package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.prognosis.JdbcNightRepository.Marked;
import org.espalier.prognosis.JdbcNightRepository.Night;
import org.espalier.science.forecast.CentreRates;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A night's work: each site learns from its own limbs, then the forecasts of children whose facts changed are made anew. By
 * chunks, each in one transaction with the cursor that says how far it has come: after a stop the next run goes on there.
 */
@Component
class Nightly {

    /** Children looked at in one transaction. */
    static final int CHUNK = 500;

    static final String PURPOSE = "forecast-nightly";

    private static final Logger LOG = LoggerFactory.getLogger(Nightly.class);
    private static final UUID BEFORE_ALL = new UUID(0, 0);

    private final JdbcNightRepository nights;
    private final Renewal renewal;
    private final RatesInUse rates;
    private final RateLearning learning;
    private final SiteService sites;
    private final TransactionTemplate transactions;

    Nightly(
            JdbcNightRepository nights,
            Renewal renewal,
            RatesInUse rates,
            RateLearning learning,
            SiteService sites,
            TransactionTemplate transactions) {
        this.nights = nights;
        this.renewal = renewal;
        this.rates = rates;
        this.learning = learning;
        this.sites = sites;
        this.transactions = transactions;
    }

    /** Goes through all sites; one that fails is told to the house and taken up again the next night. */
    void run() {
        for (SiteId site : nights.sites()) {
            try {
                var night = Callers.callAs(new Caller.SystemAtSite(site.value(), PURPOSE), () -> run(site));
                LOG.debug("Forecasts of site {}: {} renewed", site.value(), night.renewed());
            } catch (RuntimeException e) {
                LOG.error("The night's forecasts of site {} stopped", site.value(), e);
            }
        }
    }

    /** One site, for the day it has there; done is done. */
    Night run(SiteId site) {
        var night = step(site);
        while (!night.finished()) {
            night = step(site);
        }
        return night;
    }

    /** The next chunk of a site's night, in one transaction. */
    Night step(SiteId site) {
        LocalDate night = sites.today(site);
        return Objects.requireNonNull(transactions.execute(status -> {
            var begun = begin(site, night);
            return begun.finished() ? begun : chunk(site, begun);
        }));
    }

    private Night begin(SiteId site, LocalDate night) {
        var kept = nights.find(site).filter(one -> one.night().equals(night));
        if (kept.isPresent()) {
            return kept.get();
        }
        learning.learn(site);
        return new Night(night, BEFORE_ALL, 0, 0, false);
    }

    private Night chunk(SiteId site, Night before) {
        var used = rates.of(site);
        List<Marked> next = nights.next(site, before.after(), CHUNK, mark(used));
        List<Marked> changed = next.stream().filter(Marked::changed).toList();
        List<Marked> toRenew = changed.stream().filter(Marked::treated).toList();
        toRenew.forEach(one -> renewal.renew(site, one.child(), used));
        nights.mark(site, changed);
        var after = new Night(
                before.night(),
                next.isEmpty() ? before.after() : next.getLast().child().value(),
                before.looked() + next.size(),
                before.renewed() + toRenew.size(),
                next.size() < CHUNK);
        nights.save(site, after);
        return after;
    }

    private static String mark(UsedRates used) {
        return CentreRates.VERSION + ":"
                + used.learnt().map(one -> one.id().toString()).orElse("published");
    }
}
