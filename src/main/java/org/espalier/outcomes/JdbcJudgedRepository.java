package org.espalier.outcomes;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.science.forecast.FiveQuantiles;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Forecasts with the films that came later, and looks with what became of them. */
@Repository
class JdbcJudgedRepository {

    private static final String DROP = "delete from outcome_forecast where recorded_site = :site and child_id = :child";
    private static final String ADD = """
            insert into outcome_forecast (child_id, recorded_site, site_id, side, bone, bone_end, from_day, film_on,
                beforehand, left_deg, came_deg, line_deg)
            values (:child, :site, :site, :side, :bone, :end, :from, :film, :beforehand,
                array[:low90, :low50, :middle, :high50, :high90]::double precision[], :came, :line)
            """;
    private static final String COLUMNS = """
            select child_id, side, bone, bone_end, from_day, film_on, beforehand, left_deg, came_deg, line_deg
            from outcome_forecast
            """;
    private static final String OF_SITE = COLUMNS + "where recorded_site = :site order by film_on, child_id, side desc";
    private static final String OF_CHILD =
            COLUMNS + "where recorded_site = :site and child_id = :child order by side desc";

    /** A look that was called off or to which a child was not brought goes on in the next one. */
    private static final String LOOKS = """
            select child_id, look_by, outcome, outcome_on from visit where site_id = :site
            order by child_id, opened_at, id
            """;

    private final JdbcClient jdbc;

    JdbcJudgedRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void replace(SiteId site, ChildId child, List<JudgedForecast> forecasts) {
        of(DROP, site, child).update();
        forecasts.forEach(forecast -> add(site, forecast));
    }

    /** All of the hospital, by the day of the film. */
    List<JudgedForecast> all(SiteId site) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .query(JdbcJudgedRepository::judged)
                .list();
    }

    List<JudgedForecast> of(SiteId site, ChildId child) {
        return of(OF_CHILD, site, child).query(JdbcJudgedRepository::judged).list();
    }

    /** Every visit of the children the hospital has care of, each child's in their order. */
    List<Looks.Visited> looks(SiteId site) {
        return jdbc.sql(LOOKS)
                .param("site", site.value())
                .query((row, number) -> new Looks.Visited(
                        new ChildId(row.getObject("child_id", UUID.class)),
                        row.getObject("look_by", LocalDate.class),
                        Optional.ofNullable(row.getString("outcome")).map(Looks.End::valueOf),
                        Optional.ofNullable(row.getObject("outcome_on", LocalDate.class))))
                .list();
    }

    private JdbcClient.StatementSpec of(String sql, SiteId site, ChildId child) {
        return jdbc.sql(sql).param("site", site.value()).param("child", child.value());
    }

    private void add(SiteId site, JudgedForecast one) {
        of(ADD, site, one.child())
                .param("side", one.physis().side().name())
                .param("bone", one.physis().bone().name())
                .param("end", one.physis().end().name())
                .param("from", one.from())
                .param("film", one.filmOn())
                .param("beforehand", one.beforehand())
                .param("low90", one.foretold().low90())
                .param("low50", one.foretold().low50())
                .param("middle", one.foretold().middle())
                .param("high50", one.foretold().high50())
                .param("high90", one.foretold().high90())
                .param("came", one.came())
                .param("line", JdbcOutcomeRepository.boxed(one.line()))
                .update();
    }

    private static JudgedForecast judged(ResultSet row, int number) throws SQLException {
        var left = Stream.of((Double[]) row.getArray("left_deg").getArray())
                .mapToDouble(Double::doubleValue)
                .toArray();
        return new JudgedForecast(
                new ChildId(row.getObject("child_id", UUID.class)),
                JdbcOutcomeRepository.physis(row),
                row.getObject("from_day", LocalDate.class),
                row.getObject("film_on", LocalDate.class),
                row.getBoolean("beforehand"),
                FiveQuantiles.of(left),
                row.getDouble("came_deg"),
                JdbcOutcomeRepository.number(row, "line_deg"));
    }
}
