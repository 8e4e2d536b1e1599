package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Values from laboratories, each in the unit it was reported in. */
@Repository
class JdbcLabResultRepository extends JdbcFindingRepository<LabResult> {

    JdbcLabResultRepository(JdbcClient jdbc) {
        super(jdbc, LabResult.class, "lab_result", "sampled_on", List.of("analyte", "value", "unit", "lab_range"));
    }

    @Override
    Map<String, @Nullable Object> values(LabResult result) {
        var values = new HashMap<String, @Nullable Object>();
        values.put("analyte", result.analyte().name());
        values.put("value", result.value());
        values.put("unit", result.unit().name());
        values.put("lab_range", result.range());
        return values;
    }

    @Override
    LabResult finding(LocalDate on, ResultSet row) throws SQLException {
        return new LabResult(
                on,
                LabAnalyte.valueOf(row.getString("analyte")),
                row.getBigDecimal("value"),
                LabUnit.valueOf(row.getString("unit")),
                row.getString("lab_range"));
    }
}
