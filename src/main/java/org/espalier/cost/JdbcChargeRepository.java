package org.espalier.cost;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.patient.ChildId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Charges: facts. */
@Repository
class JdbcChargeRepository {

    private static final String COLUMNS = """
            select c.id, c.recorded_site, c.child_id, c.source, c.source_id, c.rule, c.item, c.side, c.on_day,
                c.until_day,
                c.quantity, c.unit_price, c.currency, c.amount, c.overhead_percent, c.overhead, c.tariff_id,
                    c.movement_id,
                c.reverses, exists (select from charge r where r.reverses = c.id) as reversed, c.adjusts, c.reason,
                s.name as by_name, c.recorded_at
            from charge c left join staff s on s.id = c.recorded_by
            """;
    private static final String LOCK = "select pg_advisory_xact_lock(hashtextextended(cast(:child as text), 831))";
    private static final String OF_CHILD = COLUMNS + """
            where c.child_id = :child order by c.on_day, c.recorded_at, c.id
            """;
    private static final String OF_ACCOUNT = COLUMNS + """
            where c.recorded_site = :site and c.child_id = :child order by c.on_day desc, c.recorded_at desc, c.id desc
            """;
    private static final String FIND = COLUMNS + "where c.id = :id";
    private static final String OF_PERIOD = COLUMNS + """
            where c.recorded_site = :site and c.on_day between :from and :until
            order by c.on_day desc, c.recorded_at desc, c.id desc limit :most
            """;
    private static final String OF_SITE = COLUMNS + """
            where c.recorded_site = :site and c.reverses is null and not exists (select from charge r where r.reverses =
                c.id)
            order by c.on_day, c.recorded_at, c.id
            """;
    private static final String ADD = """
            insert into charge (id, site_id, recorded_site, child_id, source, source_id, rule, item, side, on_day,
                until_day,
                quantity, unit_price, currency, amount, overhead_percent, overhead, tariff_id, movement_id, reverses,
                    adjusts,
                reason, recorded_by, recorded_at)
            select :id, c.site_id, :site, c.id, :source, :fact, :rule, :item, :side, :on, :until,
                :quantity, :unitPrice, :currency, :amount, :percent, :overhead, :tariff, :movement, :reverses, :adjusts,
                :reason, :by, :at
            from child c where c.id = :child
            """;

    private final JdbcClient jdbc;

    JdbcChargeRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Holds everybody else off the child's charges until this transaction is over. */
    void lock(ChildId child) {
        jdbc.sql(LOCK).param("child", child.value()).query((row, number) -> 0).single();
    }

    /** All of the child that the caller may see, by day, reversed ones too. */
    List<Charge> all(ChildId child) {
        return jdbc.sql(OF_CHILD)
                .param("child", child.value())
                .query(ChargeRows::toCharge)
                .list();
    }

    /** All of the child's account at the hospital, the latest day first. */
    List<Charge> all(SiteId site, ChildId child) {
        return jdbc.sql(OF_ACCOUNT)
                .param("site", site.value())
                .param("child", child.value())
                .query(ChargeRows::toCharge)
                .list();
    }

    Optional<Charge> find(ChargeId id) {
        return jdbc.sql(FIND)
                .param("id", id.value())
                .query(ChargeRows::toCharge)
                .optional();
    }

    /** Those of the days, ends included, the latest day first. */
    List<Charge> of(SiteId site, LocalDate from, LocalDate until, int most) {
        return jdbc.sql(OF_PERIOD)
                .param("site", site.value())
                .param("from", from)
                .param("until", until)
                .param("most", most)
                .query(ChargeRows::toCharge)
                .list();
    }

    /** All of the hospital that stand, by day. */
    List<Charge> standing(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .query(ChargeRows::toCharge)
                .list();
    }

    void add(NewCharge charge, Optional<StaffId> by, Instant at) {
        var line = charge.line();
        var side = line.side();
        priced(jdbc.sql(ADD), line)
                .param("id", charge.id().value())
                .param("site", charge.site().value())
                .param("child", charge.child().value())
                .param("source", line.source().name())
                .param("fact", line.fact())
                .param("rule", line.rule().name())
                .param("item", line.item().name())
                .param("side", side == null ? null : side.name())
                .param("on", line.on())
                .param("until", line.until())
                .param("quantity", line.quantity())
                .param("tariff", line.tariff().map(TariffId::value).orElse(null))
                .param("movement", line.movement().orElse((UUID) null))
                .param("reverses", charge.reverses().map(ChargeId::value).orElse(null))
                .param("adjusts", charge.adjusts().map(ChargeId::value).orElse(null))
                .param("reason", charge.reason().orElse((String) null))
                .param("by", by.map(StaffId::value).orElse(null))
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    private static JdbcClient.StatementSpec priced(JdbcClient.StatementSpec statement, ChargeLine line) {
        var priced = line.priced();
        return statement
                .param("unitPrice", priced.map(Priced::unit).orElse(null))
                .param(
                        "currency",
                        priced.map(one -> one.amount().currency().getCurrencyCode())
                                .orElse(null))
                .param("amount", priced.map(one -> one.amount().amount()).orElse(null))
                .param("percent", priced.map(Priced::overheadPercent).orElse(null))
                .param("overhead", priced.map(one -> one.overhead().amount()).orElse(null));
    }
}
