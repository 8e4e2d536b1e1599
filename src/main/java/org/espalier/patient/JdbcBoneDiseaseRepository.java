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

/** Since when a disease of bone is controlled, or is not. */
@Repository
class JdbcBoneDiseaseRepository extends JdbcFindingRepository<BoneDisease> {

    JdbcBoneDiseaseRepository(JdbcClient jdbc) {
        super(jdbc, BoneDisease.class, "bone_disease", "since", List.of("control", "note"));
    }

    @Override
    Map<String, @Nullable Object> values(BoneDisease disease) {
        var values = new HashMap<String, @Nullable Object>();
        values.put("control", disease.control().name());
        values.put("note", disease.note());
        return values;
    }

    @Override
    BoneDisease finding(LocalDate on, ResultSet row) throws SQLException {
        return new BoneDisease(on, BoneDisease.Control.valueOf(row.getString("control")), row.getString("note"));
    }
}
