package org.espalier.cost;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.ProcedureKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Episodes and what is still to come, kept as they were last told from the record. Written by jobs of the house alone.
 */
@Repository
class JdbcEpisodeRepository {

    private static final String DROP_EPISODES =
            "delete from cost_episode where recorded_site = :site and child_id = :child";
    private static final String DROP_EXPECTED =
            "delete from cost_expected where recorded_site = :site and child_id = :child";
    private static final String ADD_EPISODE = """
            insert into cost_episode (child_id, recorded_site, site_id, side, began, ended, pathway, operations,
                elsewhere,
                diagnosis, age_years, degrees, on_target)
            values (:child, :site, :site, :side, :began, :ended, :pathway, :operations, :elsewhere, :diagnosis, :age,
                :degrees, :onTarget)
            """;
    private static final String ADD_EXPECTED = """
            insert into cost_expected (id, child_id, recorded_site, site_id, what, kind, listed, on_day, film)
            values (:id, :child, :site, :site, :what, :kind, :listed, :on, :film)
            """;
    private static final String COLUMNS = """
            select child_id, side, began, ended, pathway, operations, elsewhere, diagnosis, age_years, degrees,
                on_target
            from cost_episode
            """;
    private static final String OF_SITE = COLUMNS + "where recorded_site = :site order by began, child_id, side";
    private static final String OF_CHILD =
            COLUMNS + "where recorded_site = :site and child_id = :child order by side desc";
    private static final String EXPECTED = "select what, kind, listed, on_day, film from cost_expected"
            + " where recorded_site = :site order by on_day, id";

    private final JdbcClient jdbc;
    private final Ids ids;

    JdbcEpisodeRepository(JdbcClient jdbc, Ids ids) {
        this.jdbc = jdbc;
        this.ids = ids;
    }

    void replace(SiteId site, ChildId child, List<Episode> episodes, List<Expected> expected) {
        of(DROP_EPISODES, site, child).update();
        of(DROP_EXPECTED, site, child).update();
        episodes.forEach(episode -> add(site, episode));
        expected.forEach(one -> add(site, child, one));
    }

    List<Episode> all(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .query(JdbcEpisodeRepository::episode)
                .list();
    }

    /** The right limb's first. */
    List<Episode> of(SiteId site, ChildId child) {
        return of(OF_CHILD, site, child).query(JdbcEpisodeRepository::episode).list();
    }

    List<Expected> expected(SiteId site) {
        return jdbc.sql(EXPECTED)
                .param("site", site.value())
                .query(JdbcEpisodeRepository::expected)
                .list();
    }

    private JdbcClient.StatementSpec of(String sql, SiteId site, ChildId child) {
        return jdbc.sql(sql).param("site", site.value()).param("child", child.value());
    }

    private void add(SiteId site, Episode episode) {
        of(ADD_EPISODE, site, episode.child())
                .param("side", episode.side().name())
                .param("began", episode.began())
                .param("ended", episode.ended().orElse((LocalDate) null))
                .param("pathway", episode.pathway().name())
                .param("operations", episode.operations())
                .param("elsewhere", episode.elsewhere())
                .param("diagnosis", episode.diagnosis().name())
                .param("age", episode.ageYears())
                .param(
                        "degrees",
                        episode.degrees().isPresent() ? episode.degrees().getAsDouble() : null)
                .param("onTarget", episode.onTarget().orElse((Boolean) null))
                .update();
    }

    private void add(SiteId site, ChildId child, Expected expected) {
        var statement = of(ADD_EXPECTED, site, child).param("id", ids.next());
        switch (expected) {
            case Expected.Operation(var kind, var listed, var on) ->
                statement
                        .param("what", "OPERATION")
                        .param("kind", kind.name())
                        .param("listed", listed)
                        .param("on", on.orElse((LocalDate) null))
                        .param("film", false)
                        .update();
            case Expected.Look(var on, var film) ->
                statement
                        .param("what", "VISIT")
                        .param("kind", null)
                        .param("listed", false)
                        .param("on", on)
                        .param("film", film)
                        .update();
        }
    }

    private static Episode episode(ResultSet row, int number) throws SQLException {
        double degrees = row.getDouble("degrees");
        boolean measured = !row.wasNull();
        return new Episode(
                new ChildId(row.getObject("child_id", UUID.class)),
                Side.valueOf(row.getString("side")),
                row.getObject("began", LocalDate.class),
                Optional.ofNullable(row.getObject("ended", LocalDate.class)),
                Pathway.valueOf(row.getString("pathway")),
                row.getInt("operations"),
                row.getBoolean("elsewhere"),
                DiagnosisGroup.valueOf(row.getString("diagnosis")),
                row.getInt("age_years"),
                measured ? OptionalDouble.of(degrees) : OptionalDouble.empty(),
                Optional.ofNullable(row.getObject("on_target", Boolean.class)));
    }

    private static Expected expected(ResultSet row, int number) throws SQLException {
        var on = row.getObject("on_day", LocalDate.class);
        return row.getString("what").equals("VISIT")
                ? new Expected.Look(on, row.getBoolean("film"))
                : new Expected.Operation(
                        ProcedureKind.valueOf(row.getString("kind")),
                        row.getBoolean("listed"),
                        Optional.ofNullable(on));
    }
}
