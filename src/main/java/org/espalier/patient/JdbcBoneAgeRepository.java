package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
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
        super(jdbc, "bone_age", "assessed_on", List.of("bone_age_months", "method"));
    }

    @Override
    Map<String, @Nullable Object> values(BoneAge boneAge) {
        return Map.of(
                "bone_age_months",
                boneAge.age().completedMonths(),
                "method",
                boneAge.method().name());
    }

    @Override
    BoneAge finding(LocalDate on, ResultSet row) throws SQLException {
        return new BoneAge(
                on, Age.ofMonths(row.getInt("bone_age_months")), BoneAgeMethod.valueOf(row.getString("method")));
    }
}
