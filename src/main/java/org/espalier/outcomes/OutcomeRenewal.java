package org.espalier.outcomes;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.prognosis.KeptForecastService;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/** Tells outcomes anew from the record, one child a transaction: one of whom no sense can be made is left out. */
@Component
class OutcomeRenewal {

    static final String PURPOSE = "outcome-renewal";

    private static final Logger LOG = LoggerFactory.getLogger(OutcomeRenewal.class);

    private final KeptForecastService facts;
    private final JdbcOutcomeRepository plates;
    private final JdbcJudgedRepository forecasts;
    private final SiteService sites;
    private final TransactionTemplate transactions;

    OutcomeRenewal(
            KeptForecastService facts,
            JdbcOutcomeRepository plates,
            JdbcJudgedRepository forecasts,
            SiteService sites,
            TransactionTemplate transactions) {
        this.facts = facts;
        this.plates = plates;
        this.forecasts = forecasts;
        this.sites = sites;
        this.transactions = transactions;
    }

    /** What is told of one child. */
    record Told(List<PlateCourse> plates, List<JudgedForecast> forecasts) {}

    /** Every hospital. */
    void renewAll() {
        plates.sites().forEach(this::renew);
    }

    /** Every child of a hospital to whom anything was done. */
    void renew(SiteId site) {
        var children = as(site, () -> plates.treated(site));
        for (var child : children) {
            try {
                renew(site, child);
            } catch (IllegalArgumentException e) {
                LOG.error("The outcomes of child {} were not told anew", child.value(), e);
            }
        }
    }

    /** One child, whole or not at all; nothing of a child that has moved on. */
    void renew(SiteId site, ChildId child) {
        as(site, () -> {
            if (plates.isHere(site, child)) {
                var told = tell(site, child);
                plates.replace(site, child, told.plates());
                forecasts.replace(site, child, told.forecasts());
            }
            return site;
        });
    }

    /** From the record alone, in a transaction of the house at the hospital. */
    Told tell(SiteId site, ChildId child) {
        return facts.of(child)
                .map(read -> new Told(
                        PlateReader.of(read, site),
                        ForecastReader.of(read, sites.get(site).zone())))
                .orElseGet(() -> new Told(List.of(), List.of()));
    }

    private <T> T as(SiteId site, Supplier<T> work) {
        var caller = new Caller.SystemAtSite(site.value(), PURPOSE);
        return Objects.requireNonNull(Callers.callAs(caller, () -> transactions.execute(status -> work.get())));
    }
}
