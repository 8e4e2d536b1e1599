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

/** Bone ages. */
@Repository
class JdbcBoneAgeRepository extends JdbcFindingRepository<BoneAge> {

    JdbcBoneAgeRepository(JdbcClient jdbc) {
        super(jdbc, BoneAge.class, "bone_age", "assessed_on", List.of("bone_age_months", "method", "reader"));
    }

    @Override
    Map<String, @Nullable Object> values(BoneAge boneAge) {
        var values = new HashMap<String, @Nullable Object>();
        values.put("bone_age_months", boneAge.age().completedMonths());
        values.put("method", boneAge.method().name());
        values.put("reader", boneAge.reader());
        return values;
    }

    @Override
    BoneAge finding(LocalDate on, ResultSet row) throws SQLException {
        return new BoneAge(
                on,
                Age.ofMonths(row.getInt("bone_age_months")),
                BoneAgeMethod.valueOf(row.getString("method")),
                row.getString("reader"));
    }
}
