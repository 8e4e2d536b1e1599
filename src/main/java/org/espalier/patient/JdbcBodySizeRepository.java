package org.espalier.patient;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Heights and weights. */
@Repository
class JdbcBodySizeRepository extends JdbcFindingRepository<BodySize> {

    private static final double MILLIMETRES = 10;

    JdbcBodySizeRepository(JdbcClient jdbc) {
        super(jdbc, BodySize.class, "body_size", "measured_on", List.of("height_cm", "weight_kg"));
    }

    @Override
    Map<String, @Nullable Object> values(BodySize size) {
        var values = new HashMap<String, @Nullable Object>();
        var height = size.height();
        var weight = size.weight();
        values.put("height_cm", height == null ? null : BigDecimal.valueOf(height.millimetres() / MILLIMETRES));
        values.put("weight_kg", weight == null ? null : BigDecimal.valueOf(weight.kilograms()));
        return values;
    }

    @Override
    BodySize finding(LocalDate on, ResultSet row) throws SQLException {
        var height = row.getBigDecimal("height_cm");
        var weight = row.getBigDecimal("weight_kg");
        return new BodySize(
                on,
                height == null ? null : Length.ofCentimetres(height.doubleValue()),
                weight == null ? null : Weight.ofKilograms(weight.doubleValue()));
    }
}
