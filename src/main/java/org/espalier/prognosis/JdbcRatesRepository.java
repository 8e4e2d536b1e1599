package org.espalier.prognosis;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.platform.Ids;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Rate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What centres learnt from their own limbs, and whether they forecast by it. */
@Repository
class JdbcRatesRepository {

    private static final String ADD = """
            insert into centre_rates (id, site_id, version, limbs, learnt_from, rate_values, rate_spreads, learnt_at)
            values (:id, :site, :version, :limbs, :learntFrom, :values, :spreads, :at)
            """;
    private static final String LEARNT = """
            select id, limbs, learnt_from, rate_values, rate_spreads, learnt_at from centre_rates
            where site_id = :site and version = :version
            order by learnt_at desc, id desc limit :most
            """;
    private static final String ADD_CHOICE = """
            insert into centre_rates_choice (id, site_id, own, reason, chosen_by, chosen_at)
            values (:id, :site, :own, :reason, :by, :at)
            """;
    private static final String CHOICES = """
            select r.own, r.reason, s.name, r.chosen_at
            from centre_rates_choice r join staff s on s.id = r.chosen_by
            where r.site_id = :site order by r.chosen_at desc, r.id desc
            """;

    private final JdbcClient jdbc;
    private final Ids ids;

    JdbcRatesRepository(JdbcClient jdbc, Ids ids) {
        this.jdbc = jdbc;
        this.ids = ids;
    }

    void add(SiteId site, CentreRates rates, String learntFrom, Instant at) {
        jdbc.sql(ADD)
                .param("id", ids.next())
                .param("site", site.value())
                .param("version", CentreRates.VERSION)
                .param("limbs", rates.limbs())
                .param("learntFrom", learntFrom)
                .param(
                        "values",
                        Arrays.stream(Rate.values())
                                .mapToDouble(rates::value)
                                .boxed()
                                .toArray(Double[]::new))
                .param(
                        "spreads",
                        Arrays.stream(Rate.values())
                                .mapToDouble(rates::spread)
                                .boxed()
                                .toArray(Double[]::new))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Rates as they were learnt, the newest first; those of an earlier version are of no use any more. */
    List<LearntRates> learnt(SiteId site, int most) {
        return jdbc.sql(LEARNT)
                .param("site", site.value())
                .param("version", CentreRates.VERSION)
                .param("most", most)
                .query(JdbcRatesRepository::learnt)
                .list();
    }

    Optional<LearntRates> newest(SiteId site) {
        return learnt(site, 1).stream().findFirst();
    }

    void choose(SiteId site, RateSource source, String reason, StaffId by, Instant at) {
        jdbc.sql(ADD_CHOICE)
                .param("id", ids.next())
                .param("site", site.value())
                .param("own", source == RateSource.OWN)
                .param("reason", reason)
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** What was chosen, the newest first. */
    List<RatesChoice> choices(SiteId site) {
        return jdbc.sql(CHOICES)
                .param("site", site.value())
                .query((row, number) -> new RatesChoice(
                        row.getBoolean("own") ? RateSource.OWN : RateSource.PUBLISHED,
                        row.getString("reason"),
                        row.getString("name"),
                        at(row, "chosen_at")))
                .list();
    }

    private static LearntRates learnt(ResultSet row, int number) throws SQLException {
        return new LearntRates(
                row.getObject("id", UUID.class),
                CentreRates.of(
                        row.getInt("limbs"),
                        doubles(row.getArray("rate_values")),
                        doubles(row.getArray("rate_spreads"))),
                row.getString("learnt_from"),
                at(row, "learnt_at"));
    }

    private static double[] doubles(Array array) throws SQLException {
        return Arrays.stream((Double[]) array.getArray())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static Instant at(ResultSet row, String column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }
}
