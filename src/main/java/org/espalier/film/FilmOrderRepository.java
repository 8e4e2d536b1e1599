package org.espalier.film;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Orders of films. */
@Repository
class FilmOrderRepository {

    private static final String ADD = """
            insert into film_order (id, site_id, recorded_site, child_id, asked_on, for_day, needed, sides, protocol,
                lift_side, lift_mm, ball, reason, recorded_by, recorded_at)
            values (:id, :site, :site, :child, :askedOn, :forDay, :needed, :sides, :protocol,
                :liftSide, :liftMm, :ball, :reason, current_staff(), :at)
            on conflict do nothing""";

    private static final String COLUMNS = """
            select o.id, o.site_id, o.child_id, o.asked_on, o.for_day, o.needed, o.sides, o.protocol, o.lift_side,
                o.lift_mm, o.ball, o.reason, s.name as by_name
            from film_order o left join staff s on s.id = o.recorded_by
            """;

    private static final String OF_CHILD =
            COLUMNS + "where o.child_id = :child order by o.for_day desc, o.recorded_at desc, o.id";

    private static final String ON_DAY = COLUMNS + """
            where o.site_id = :site and (o.for_day = :day or :withOlder and o.for_day < :day and o.needed and not exists
                (
                select from film_order_step e where e.order_id = o.id and e.kind <> 'EXPOSURE_REJECTED'))
            order by o.for_day, o.recorded_at, o.id""";

    private final JdbcClient jdbc;
    private final FilmOrderStepRepository stepsOf;

    FilmOrderRepository(JdbcClient jdbc, FilmOrderStepRepository stepsOf) {
        this.jdbc = jdbc;
        this.stepsOf = stepsOf;
    }

    void add(FilmOrderId id, Child child, LocalDate askedOn, LocalDate forDay, FilmWish wish, Instant at) {
        var film = wish instanceof FilmWish.Film one ? Optional.of(one) : Optional.<FilmWish.Film>empty();
        var lift = film.map(FilmWish.Film::lift);
        jdbc.sql(ADD)
                .param("id", id.value())
                .param("site", child.site().value())
                .param("child", child.id().value())
                .param("askedOn", askedOn)
                .param("forDay", forDay)
                .param("needed", film.isPresent())
                .param("sides", film.map(one -> one.sides().name()).orElse(null))
                .param("protocol", film.map(one -> one.protocol().name()).orElse(null))
                .param("liftSide", lift.map(one -> one.side().name()).orElse(null))
                .param(
                        "liftMm",
                        lift.map(one -> Math.round(one.height().millimetres())).orElse(null))
                .param("ball", film.map(FilmWish.Film::ball).orElse(null))
                .param("reason", reason(wish))
                .param("at", Timestamp.from(at))
                .update();
    }

    private static @Nullable String reason(FilmWish wish) {
        return switch (wish) {
            case FilmWish.Film film -> film.reason();
            case FilmWish.NoFilm none -> none.reason();
        };
    }

    List<FilmOrder> of(ChildId child) {
        return withSteps(jdbc.sql(OF_CHILD).param("child", child.value()));
    }

    /** Orders for the day, and with older ones those still open from before. */
    List<FilmOrder> on(SiteId site, LocalDate day, boolean withOlder) {
        return withSteps(
                jdbc.sql(ON_DAY).param("site", site.value()).param("day", day).param("withOlder", withOlder));
    }

    private List<FilmOrder> withSteps(JdbcClient.StatementSpec statement) {
        var bare = statement.query(FilmOrderRepository::order).list();
        var steps = stepsOf.all(bare.stream().map(FilmOrder::id).toList());
        return bare.stream()
                .map(order -> new FilmOrder(
                        order.id(),
                        order.site(),
                        order.child(),
                        order.askedOn(),
                        order.forDay(),
                        order.wish(),
                        order.by(),
                        steps.getOrDefault(order.id(), List.of())))
                .toList();
    }

    private static FilmOrder order(ResultSet row, int number) throws SQLException {
        return new FilmOrder(
                new FilmOrderId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("site_id", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                row.getObject("asked_on", LocalDate.class),
                row.getObject("for_day", LocalDate.class),
                wish(row),
                row.getString("by_name"),
                List.of());
    }

    private static FilmWish wish(ResultSet row) throws SQLException {
        var reason = row.getString("reason");
        if (!row.getBoolean("needed")) {
            return new FilmWish.NoFilm(reason);
        }
        var liftSide = row.getString("lift_side");
        var lift = liftSide == null
                ? null
                : new FilmWish.Lift(Side.valueOf(liftSide), Length.ofMillimetres(row.getInt("lift_mm")));
        return new FilmWish.Film(
                AffectedSides.valueOf(row.getString("sides")),
                FilmProtocol.valueOf(row.getString("protocol")),
                lift,
                row.getBoolean("ball"),
                reason);
    }
}
