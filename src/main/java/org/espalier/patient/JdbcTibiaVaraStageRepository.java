package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Stages of early onset tibia vara, each by one reader on one film. */
@Repository
class JdbcTibiaVaraStageRepository extends JdbcFindingRepository<TibiaVaraStage> {

    JdbcTibiaVaraStageRepository(JdbcClient jdbc) {
        super(jdbc, TibiaVaraStage.class, "tibia_vara_stage", "film_on", List.of("side", "stage"));
    }

    @Override
    Map<String, @Nullable Object> values(TibiaVaraStage stage) {
        return Map.of("side", stage.side().name(), "stage", stage.stage().name());
    }

    @Override
    TibiaVaraStage finding(LocalDate on, ResultSet row) throws SQLException {
        return new TibiaVaraStage(
                on, Side.valueOf(row.getString("side")), TibiaVaraStage.Stage.valueOf(row.getString("stage")));
    }
}
