package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.quantity.Age;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Diagnoses. */
@Repository
class JdbcDiagnosisRepository extends JdbcFindingRepository<Diagnosis> {

    JdbcDiagnosisRepository(JdbcClient jdbc) {
        super(
                jdbc,
                Diagnosis.class,
                "diagnosis",
                "diagnosed_on",
                List.of("kind", "sides", "scheme", "onset", "onset_age_months", "note"));
    }

    @Override
    Map<String, @Nullable Object> values(Diagnosis diagnosis) {
        var values = new HashMap<String, @Nullable Object>();
        var onset = diagnosis.onset();
        var onsetAge = diagnosis.onsetAge();
        values.put("kind", diagnosis.kind().name());
        values.put("sides", diagnosis.sides().name());
        values.put("scheme", onset == null ? null : onset.scheme().name());
        values.put("onset", onset == null ? null : onset.name());
        values.put("onset_age_months", onsetAge == null ? null : onsetAge.completedMonths());
        values.put("note", diagnosis.note());
        return values;
    }

    @Override
    Diagnosis finding(LocalDate on, ResultSet row) throws SQLException {
        var onset = row.getString("onset");
        var months = row.getObject("onset_age_months", Integer.class);
        return new Diagnosis(
                on,
                DiagnosisKind.valueOf(row.getString("kind")),
                AffectedSides.valueOf(row.getString("sides")),
                onset == null ? null : Onset.valueOf(onset),
                months == null ? null : Age.ofMonths(months),
                row.getString("note"));
    }
}
