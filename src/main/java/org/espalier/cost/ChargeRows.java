package org.espalier.cost;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Currency;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** Reads charges from rows. */
final class ChargeRows {

    private ChargeRows() {}

    static Charge toCharge(ResultSet row, int number) throws SQLException {
        return new Charge(
                new ChargeId(row.getObject("id", UUID.class)),
                new SiteId(row.getObject("recorded_site", UUID.class)),
                new ChildId(row.getObject("child_id", UUID.class)),
                line(row),
                id(row, "reverses").map(ChargeId::new),
                row.getBoolean("reversed"),
                id(row, "adjusts").map(ChargeId::new),
                Optional.ofNullable(row.getString("reason")),
                Optional.ofNullable(row.getString("by_name")),
                row.getObject("recorded_at", OffsetDateTime.class).toInstant());
    }

    private static ChargeLine line(ResultSet row) throws SQLException {
        return new ChargeLine(
                ChargeSource.valueOf(row.getString("source")),
                row.getObject("source_id", UUID.class),
                ChargeRule.valueOf(row.getString("rule")),
                TariffItem.valueOf(row.getString("item")),
                side(row.getString("side")),
                row.getObject("on_day", LocalDate.class),
                row.getObject("until_day", LocalDate.class),
                row.getBigDecimal("quantity"),
                priced(row),
                id(row, "tariff_id").map(TariffId::new),
                id(row, "movement_id"));
    }

    private static Optional<Priced> priced(ResultSet row) throws SQLException {
        var code = row.getString("currency");
        if (code == null) {
            return Optional.empty();
        }
        var currency = Currency.getInstance(code);
        return Optional.of(new Priced(
                row.getBigDecimal("unit_price"),
                new Money(row.getBigDecimal("amount"), currency),
                row.getBigDecimal("overhead_percent"),
                new Money(row.getBigDecimal("overhead"), currency)));
    }

    private static @Nullable Side side(@Nullable String name) {
        return name == null ? null : Side.valueOf(name);
    }

    private static Optional<UUID> id(ResultSet row, String column) throws SQLException {
        return Optional.ofNullable(row.getObject(column, UUID.class));
    }
}
