package org.espalier.platform;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Does a night's work: by chunks, each in one transaction with the cursor that says how far it has come. After a stop,
 * or a killed program, the next run goes on there and does nothing twice.
 */
@Component
public class Nights {

    private static final Logger LOG = LoggerFactory.getLogger(Nights.class);

    private static final String FIND = """
            select night, after_id, looked, renewed, finished from night_work where site_id = :site and work = :work
            """;
    private static final String SAVE = """
            insert into night_work (site_id, work, night, after_id, looked, renewed, finished)
            values (:site, :work, :night, :after, :looked, :renewed, :finished)
            on conflict (site_id, work) do update set night = excluded.night, after_id = excluded.after_id,
                looked = excluded.looked, renewed = excluded.renewed, finished = excluded.finished
            """;

    private final JdbcClient jdbc;
    private final TransactionTemplate transactions;

    Nights(JdbcClient jdbc, TransactionTemplate transactions) {
        this.jdbc = jdbc;
        this.transactions = transactions;
    }

    /** Goes through all hospitals; one that fails is told to the house and taken up again the next night. */
    public void run(NightWork work) {
        for (var site : work.sites()) {
            try {
                var night = Callers.callAs(new Caller.SystemAtSite(site, work.name()), () -> run(work, site));
                LOG.debug("{} of site {}: {} renewed", work.name(), site, night.renewed());
            } catch (RuntimeException e) {
                LOG.error("The work {} of site {} stopped", work.name(), site, e);
            }
        }
    }

    /** One hospital, for the day it has there; done is done. */
    public Night run(NightWork work, UUID site) {
        var night = step(work, site);
        while (!night.finished()) {
            night = step(work, site);
        }
        return night;
    }

    /** The next chunk of a hospital's night, in one transaction. */
    public Night step(NightWork work, UUID site) {
        return Objects.requireNonNull(transactions.execute(status -> {
            var begun = begin(work, site);
            return begun.finished() ? begun : chunk(work, site, begun);
        }));
    }

    private Night begin(NightWork work, UUID site) {
        var today = work.today(site);
        var kept = find(work, site).filter(one -> one.day().equals(today));
        if (kept.isEmpty()) {
            work.begin(site);
        }
        return kept.orElseGet(() -> Night.begun(today));
    }

    private Night chunk(NightWork work, UUID site, Night before) {
        var after = before.with(work.next(site, before));
        jdbc.sql(SAVE)
                .param("site", site)
                .param("work", work.name())
                .param("night", after.day())
                .param("after", after.after())
                .param("looked", after.looked())
                .param("renewed", after.renewed())
                .param("finished", after.finished())
                .update();
        return after;
    }

    private Optional<Night> find(NightWork work, UUID site) {
        return jdbc.sql(FIND)
                .param("site", site)
                .param("work", work.name())
                .query((row, number) -> new Night(
                        row.getObject("night", LocalDate.class),
                        row.getObject("after_id", UUID.class),
                        row.getInt("looked"),
                        row.getInt("renewed"),
                        row.getBoolean("finished")))
                .optional();
    }
}
