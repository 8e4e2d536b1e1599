package org.espalier.followup;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.JdbcVisitNightRepository.Night;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Every night the harm of waiting is worked out anew for who waits, for it grows with each day. By chunks, each in one
 * transaction with the cursor that says how far it has come: after a stop the next run goes on there.
 */
@Component
class RecallNight {

    static final String PURPOSE = "recall-nightly";
    static final int CHUNK = 500;

    private static final String REBUILD = "recall-rebuild";

    private static final Logger LOG = LoggerFactory.getLogger(RecallNight.class);
    private static final UUID BEFORE_ALL = new UUID(0, 0);

    private final JdbcVisitNightRepository nights;
    private final DueByService dueBy;
    private final SiteService sites;
    private final TransactionTemplate transactions;

    RecallNight(
            JdbcVisitNightRepository nights, DueByService dueBy, SiteService sites, TransactionTemplate transactions) {
        this.nights = nights;
        this.dueBy = dueBy;
        this.sites = sites;
        this.transactions = transactions;
    }

    /** Goes through all sites; one that fails is told to the house and taken up again the next night. */
    void run() {
        for (var site : nights.sites()) {
            try {
                Callers.runAs(new Caller.SystemAtSite(site.value(), PURPOSE), () -> run(site));
            } catch (RuntimeException e) {
                LOG.error("The night's recall of site {} stopped", site.value(), e);
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

    /** Works out anew everything that is kept beside the facts of every open visit, at all sites; how many there were. */
    int rebuild() {
        int rebuilt = 0;
        for (var site : nights.sites()) {
            rebuilt += Callers.callAs(new Caller.SystemAtSite(site.value(), REBUILD), () -> rebuild(site));
        }
        return rebuilt;
    }

    private int rebuild(SiteId site) {
        int rebuilt = 0;
        var next = rebuild(site, BEFORE_ALL);
        while (!next.isEmpty()) {
            rebuilt += next.size();
            next = rebuild(site, next.getLast().visit());
        }
        return rebuilt;
    }

    private List<JdbcVisitNightRepository.Waiting> rebuild(SiteId site, UUID after) {
        return Objects.requireNonNull(transactions.execute(status -> {
            var next = nights.all(site, after, CHUNK);
            next.forEach(waiting -> dueBy.renew(waiting.child()));
            return next;
        }));
    }

    private Night step(SiteId site) {
        return Objects.requireNonNull(transactions.execute(status -> {
            var today = sites.today(site);
            var begun = nights.find(site)
                    .filter(one -> one.night().equals(today))
                    .orElse(new Night(today, BEFORE_ALL, 0, false));
            return begun.finished() ? begun : chunk(site, begun);
        }));
    }

    private Night chunk(SiteId site, Night before) {
        List<JdbcVisitNightRepository.Waiting> next = nights.next(site, before.night(), before.after(), CHUNK);
        next.forEach(waiting -> dueBy.renew(waiting.child()));
        var after = new Night(
                before.night(),
                next.isEmpty() ? before.after() : next.getLast().visit(),
                before.renewed() + next.size(),
                next.size() < CHUNK);
        nights.save(site, after);
        return after;
    }
}
