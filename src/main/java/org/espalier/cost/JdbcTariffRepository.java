package org.espalier.cost;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Tariffs and the days they hold for. A price that was set is never changed; another ends it. */
@Repository
class JdbcTariffRepository {

    private static final String ALL = """
            select id, site_id, item, payer, lower(valid) as from_day, upper(valid) as until_day, price, currency, tax,
                source,
                replaced <> '00000000-0000-0000-0000-000000000000' as replaced
            from cost_tariff where site_id = :site order by item, payer, lower(valid) desc, recorded_at desc
            """;
    private static final String ADD = """
            insert into cost_tariff (id, site_id, item, payer, valid, price, currency, tax, source, recorded_by,
                recorded_at)
            values (:id, :site, :item, :payer, daterange(:from, :until), :price, :currency, :tax, :source, :by, :at)
            """;
    private static final String SITES = "select sites_with_tariffs()";

    private final JdbcClient jdbc;
    private final JdbcSuccession succession;

    JdbcTariffRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
        succession = new JdbcSuccession(jdbc, "cost_tariff", "item = :item and payer = :payer");
    }

    /** By item, the latest first; replaced ones too. */
    List<Tariff> all(SiteId site) {
        return jdbc.sql(ALL)
                .param("site", site.value())
                .query(JdbcTariffRepository::tariff)
                .list();
    }

    /**
     * Adds a tariff: it ends the one before it, takes the place of one of the same first day, and ends with the next.
     */
    void add(TariffId id, SiteId site, TariffData data, Optional<StaffId> by, Instant at) {
        var key = Map.of("item", data.item().name(), "payer", data.payer());
        var next = succession.makeRoom(site, key, data.from());
        var currency = data.currency();
        jdbc.sql(ADD)
                .params(key)
                .param("site", site.value())
                .param("from", data.from())
                .param("id", id.value())
                .param("until", next.orElse(null))
                .param("price", data.price())
                .param("currency", currency == null ? null : currency.getCurrencyCode())
                .param("tax", data.tax().name())
                .param("source", data.source())
                .param("by", by.map(StaffId::value).orElse(null))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** The hospitals that have set a tariff. */
    List<SiteId> sites() {
        return jdbc.sql(SITES)
                .query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
                .list();
    }

    private static Tariff tariff(ResultSet row, int number) throws SQLException {
        var data = new TariffData(
                TariffItem.valueOf(row.getString("item")),
                row.getString("payer"),
                row.getBigDecimal("price"),
                currency(row.getString("currency")),
                Tax.valueOf(row.getString("tax")),
                row.getObject("from_day", LocalDate.class),
                row.getString("source"));
        return new Tariff(
                new TariffId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                data,
                Optional.ofNullable(row.getObject("until_day", LocalDate.class)),
                row.getBoolean("replaced"));
    }

    private static @Nullable Currency currency(@Nullable String code) {
        return code == null ? null : Currency.getInstance(code);
    }
}
