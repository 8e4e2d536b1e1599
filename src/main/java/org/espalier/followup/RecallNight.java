package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Night;
import org.espalier.platform.NightWork;
import org.espalier.platform.Nights;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Every night the harm of waiting is worked out anew for who waits, for it grows with each day, and all dates of a
 * hospital whose limits or wait for theatre have become others.
 */
@Component
class RecallNight implements NightWork {

    static final String PURPOSE = "recall-nightly";

    private static final String REBUILD = "recall-rebuild";

    private static final UUID BEFORE_ALL = new UUID(0, 0);

    private final JdbcVisitNightRepository waiting;
    private final DueByService dueBy;
    private final DueDates dueDates;
    private final SiteService sites;
    private final Nights nights;
    private final TransactionTemplate transactions;

    RecallNight(
            JdbcVisitNightRepository waiting,
            DueByService dueBy,
            DueDates dueDates,
            SiteService sites,
            Nights nights,
            TransactionTemplate transactions) {
        this.waiting = waiting;
        this.dueBy = dueBy;
        this.dueDates = dueDates;
        this.sites = sites;
        this.nights = nights;
        this.transactions = transactions;
    }

    void run() {
        nights.run(this);
    }

    Night run(SiteId site) {
        return nights.run(this, site.value());
    }

    @Override
    public String name() {
        return PURPOSE;
    }

    @Override
    public List<UUID> sites() {
        return waiting.sites().stream().map(SiteId::value).toList();
    }

    @Override
    public LocalDate today(UUID site) {
        return sites.today(new SiteId(site));
    }

    @Override
    public Chunk next(UUID id, Night before) {
        var site = new SiteId(id);
        var rules = dueDates.rules(site);
        var next = waiting.next(site, before.day(), rules.mark(), before.after(), CHUNK);
        next.forEach(one -> dueBy.renew(one.child(), rules));
        return new Chunk(
                next.stream().map(JdbcVisitNightRepository.Waiting::visit).toList(), next.size());
    }

    /**
     * Works out anew everything that is kept beside the facts of every open visit, at all sites; how many there were.
     */
    int rebuild() {
        int rebuilt = 0;
        for (var site : waiting.sites()) {
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
            var next = waiting.all(site, after, CHUNK);
            var rules = dueDates.rules(site);
            next.forEach(one -> dueBy.renew(one.child(), rules));
            return next;
        }));
    }
}
