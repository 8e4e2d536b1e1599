package org.espalier.patient;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.espalier.access.SiteId;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Stages of early onset tibia vara, each by one reader on one film. */
@Repository
class JdbcTibiaVaraStageRepository extends JdbcFindingRepository<TibiaVaraStage> {

    private static final String PAIRS = """
            select one.stage as first, other.stage as second
            from tibia_vara_stage one
            join tibia_vara_stage other
                on other.child_id = one.child_id and other.side = one.side and other.film_on = one.film_on
                and other.recorded_by <> one.recorded_by and (other.recorded_at, other.id) > (one.recorded_at, one.id)
            where one.site_id = :site and not one.withdrawn and not other.withdrawn
                and not exists (select from tibia_vara_stage later where later.supersedes in (one.id, other.id))
            order by one.recorded_at, one.id, other.recorded_at, other.id
            """;

    private final JdbcClient jdbc;

    JdbcTibiaVaraStageRepository(JdbcClient jdbc) {
        super(jdbc, TibiaVaraStage.class, "tibia_vara_stage", "film_on", List.of("side", "stage"));
        this.jdbc = jdbc;
    }

    /** Films of the children of a site that two read, as both readings stand. */
    List<StagePair> pairs(SiteId site) {
        return jdbc.sql(PAIRS)
                .param("site", site.value())
                .query((row, number) -> new StagePair(
                        TibiaVaraStage.Stage.valueOf(row.getString("first")),
                        TibiaVaraStage.Stage.valueOf(row.getString("second"))))
                .list();
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
