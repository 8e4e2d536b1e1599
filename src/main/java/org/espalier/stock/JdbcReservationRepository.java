package org.espalier.stock;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.science.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is kept for planned operations. */
@Repository
class JdbcReservationRepository {

    private static final String ADD = """
            insert into stock_reservation (id, site_id, holder, needed_on, made_by, made_at)
            values (:id, :site, :holder, :on, :by, :at) on conflict (id) do nothing
            """;
    private static final String ADD_NEED = """
            insert into stock_need (reservation_id, line, site_id, kind, product_id, diameter_mm, from_mm, to_mm,
                driver, quantity)
            values (:id, :line, :site, :kind, :product, :diameter, :from, :to, :driver, :quantity)
            """;
    private static final String END = """
            update stock_reservation set ended_by = :by, ended_at = :at where holder = :holder and ended_at is null
            """;
    private static final String OPEN = """
            select r.id, r.holder, r.needed_on, n.kind, n.product_id, n.diameter_mm, n.from_mm, n.to_mm, n.driver,
                n.quantity
            from (
                select * from stock_reservation where site_id = :site and ended_at is null order by needed_on limit 200
            ) r join stock_need n on n.reservation_id = r.id
            order by r.needed_on, r.id, n.line
            """;

    private final JdbcClient jdbc;

    JdbcReservationRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(Reservation reservation, StaffId by, Instant at) {
        int added = jdbc.sql(ADD)
                .param("id", reservation.id())
                .param("site", reservation.site().value())
                .param("holder", reservation.holder())
                .param("on", reservation.neededOn())
                .param("by", by.value())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
        for (int line = 1; added == 1 && line <= reservation.needs().size(); line++) {
            add(reservation, line, reservation.needs().get(line - 1));
        }
    }

    private void add(Reservation reservation, int line, Need need) {
        var product = need.product();
        jdbc.sql(ADD_NEED)
                .param("id", reservation.id())
                .param("line", line)
                .param("site", reservation.site().value())
                .param("kind", need.kind().name())
                .param("product", product == null ? null : product.value())
                .param("diameter", StockRows.millimetres(need.diameter()))
                .param("from", StockRows.millimetres(need.shortest()))
                .param("to", StockRows.millimetres(need.longest()))
                .param("driver", need.driver())
                .param("quantity", need.quantity())
                .update();
    }

    boolean end(UUID holder, @Nullable StaffId by, Instant at) {
        return jdbc.sql(END)
                        .param("holder", holder)
                        .param("by", by == null ? null : by.value())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** Those that stand, the first operation first. */
    List<Reservation> open(SiteId site) {
        var reservations = new LinkedHashMap<UUID, Reservation>();
        jdbc.sql(OPEN)
                .param("site", site.value())
                .query((row, number) -> new Reservation(
                        row.getObject("id", UUID.class),
                        site,
                        row.getObject("holder", UUID.class),
                        row.getObject("needed_on", LocalDate.class),
                        List.of(need(row))))
                .list()
                .forEach(one -> reservations.merge(one.id(), one, JdbcReservationRepository::together));
        return List.copyOf(reservations.values());
    }

    private static Reservation together(Reservation one, Reservation more) {
        var needs = new ArrayList<>(one.needs());
        needs.addAll(more.needs());
        return new Reservation(one.id(), one.site(), one.holder(), one.neededOn(), needs);
    }

    private static Need need(ResultSet row) throws SQLException {
        var product = row.getObject("product_id", UUID.class);
        return new Need(
                ProductKind.valueOf(row.getString("kind")),
                product == null ? null : new ProductId(product),
                length(row.getBigDecimal("diameter_mm")),
                length(row.getBigDecimal("from_mm")),
                length(row.getBigDecimal("to_mm")),
                row.getString("driver"),
                row.getInt("quantity"));
    }

    private static @Nullable Length length(@Nullable BigDecimal millimetres) {
        return millimetres == null ? null : Length.ofMillimetres(millimetres.doubleValue());
    }
}
