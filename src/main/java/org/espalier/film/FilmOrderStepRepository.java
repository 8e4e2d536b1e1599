package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What happened to orders of films. */
@Repository
class FilmOrderStepRepository {

    private static final String ADD_STEP = """
            insert into film_order_step (id, site_id, recorded_site, child_id, order_id, kind, rejected, reason, dose,
                dose_unit, recorded_by, recorded_at)
            select :id, o.site_id, o.site_id, o.child_id, o.id, :kind, :rejected, :reason, :dose, :doseUnit,
                current_staff(), :at
            from film_order o where o.id = :order and o.needed and not exists (
                select from film_order_step e where e.order_id = o.id and e.kind <> 'EXPOSURE_REJECTED')
            on conflict do nothing""";

    private static final String KEPT = "select exists (select from film_order_step where id = :id)";

    private static final String STEPS = """
            select e.order_id, e.kind, e.rejected, e.reason, e.dose, e.dose_unit, e.recorded_at, s.name as by_name
            from film_order_step e left join staff s on s.id = e.recorded_by
            where e.order_id = any(:orders)
            order by e.recorded_at, e.id""";

    private final JdbcClient jdbc;

    FilmOrderStepRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether it is kept now; not when the order had ended. */
    boolean add(FilmOrderId order, UUID id, FilmHappening what, Instant at) {
        var dose = dose(what);
        jdbc.sql(ADD_STEP)
                .param("id", id)
                .param("order", order.value())
                .param("kind", kind(what))
                .param(
                        "rejected",
                        what instanceof FilmHappening.Rejected one ? one.why().name() : null)
                .param("reason", reason(what))
                .param("dose", dose == null ? null : dose.value())
                .param("doseUnit", dose == null ? null : dose.unit().name())
                .param("at", Timestamp.from(at))
                .update();
        return jdbc.sql(KEPT).param("id", id).query(Boolean.class).single();
    }

    private static String kind(FilmHappening what) {
        return switch (what) {
            case FilmHappening.Rejected rejected -> "EXPOSURE_REJECTED";
            case FilmHappening.Taken taken -> "TAKEN";
            case FilmHappening.NotTaken not -> "NOT_TAKEN";
            case FilmHappening.Withdrawn withdrawn -> "WITHDRAWN";
        };
    }

    private static @Nullable DoseAreaProduct dose(FilmHappening what) {
        return switch (what) {
            case FilmHappening.Rejected rejected -> rejected.dose();
            case FilmHappening.Taken taken -> taken.dose();
            case FilmHappening.NotTaken not -> null;
            case FilmHappening.Withdrawn withdrawn -> null;
        };
    }

    private static @Nullable String reason(FilmHappening what) {
        return switch (what) {
            case FilmHappening.NotTaken(String reason) -> reason;
            case FilmHappening.Withdrawn(String reason) -> reason;
            case FilmHappening.Rejected rejected -> null;
            case FilmHappening.Taken taken -> null;
        };
    }

    /** What happened to each of the orders, the first first. */
    Map<FilmOrderId, List<FilmOrderStep>> all(Collection<FilmOrderId> orders) {
        return jdbc
                .sql(STEPS)
                .param("orders", orders.stream().map(FilmOrderId::value).toArray(UUID[]::new))
                .query(FilmOrderStepRepository::step)
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    private static Map.Entry<FilmOrderId, FilmOrderStep> step(ResultSet row, int number) throws SQLException {
        return Map.entry(
                new FilmOrderId(row.getObject("order_id", UUID.class)),
                new FilmOrderStep(
                        happening(row),
                        row.getString("by_name"),
                        row.getTimestamp("recorded_at").toInstant()));
    }

    private static FilmHappening happening(ResultSet row) throws SQLException {
        var value = row.getBigDecimal("dose");
        var dose = value == null
                ? null
                : new DoseAreaProduct(value, DoseAreaProduct.Unit.valueOf(row.getString("dose_unit")));
        var kind = row.getString("kind");
        return switch (kind) {
            case "EXPOSURE_REJECTED" ->
                new FilmHappening.Rejected(FilmHappening.RejectReason.valueOf(row.getString("rejected")), dose);
            case "TAKEN" -> new FilmHappening.Taken(dose);
            case "NOT_TAKEN" -> new FilmHappening.NotTaken(row.getString("reason"));
            case "WITHDRAWN" -> new FilmHappening.Withdrawn(row.getString("reason"));
            default -> throw new IllegalStateException("no such step: " + kind);
        };
    }
}
