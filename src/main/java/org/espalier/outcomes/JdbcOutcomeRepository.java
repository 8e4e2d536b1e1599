package org.espalier.outcomes;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.PhysisKey;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What came of plates, kept as it was last told from the record. Written by jobs of the house alone. */
@Repository
class JdbcOutcomeRepository {

    private static final String SITES = "select sites_of_the_night()";

    private static final String TREATED = """
            select c.id from child c where c.site_id = :site
                and exists (select from procedure_session p where p.child_id = c.id)
            order by c.id
            """;
    private static final String IS_HERE = "select exists (select from child where id = :child and site_id = :site)";
    private static final String DROP = "delete from outcome_plate where recorded_site = :site and child_id = :child";
    private static final String ADD = """
            insert into outcome_plate (child_id, recorded_site, site_id, side, bone, bone_end, plate_on, left_out, came,
                to_day, past_deg, after_release, drift_deg, complication, came_back, diagnosis, age_years, growth_years,
                never_foretold, reached_on)
            values (:child, :site, :site, :side, :bone, :end, :plateOn, :leftOut, :came, :to, :past, :after, :drift,
                :complication, :back, :diagnosis, :age, :growth, :never, :reachedOn)
            """;
    private static final String COLUMNS = """
            select child_id, recorded_site, site_id, side, bone, bone_end, plate_on, left_out, came, to_day, past_deg,
                after_release, drift_deg, complication, came_back, diagnosis, age_years, growth_years, never_foretold,
                reached_on
            from outcome_plate
            """;
    private static final String OF_SITE =
            COLUMNS + "where recorded_site = :site and plate_on between :from and :to order by plate_on, child_id";
    private static final String ALL = COLUMNS + "where recorded_site = :site";
    private static final String OF_CHILD = COLUMNS + "where recorded_site = :site and child_id = :child";
    private static final String COUNTS = "select site_id, what, which, children from outcome_counts(:from, :to)";

    private final JdbcClient jdbc;

    JdbcOutcomeRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** So many children of a hospital in one group of a kind. */
    record Count(SiteId site, String what, String which, int children) {}

    /** A plate, and whether the hospital that wrote it down still has care of the child. */
    record Kept(PlateCourse plate, boolean here) {}

    /** Every hospital, for which no caller is needed. */
    List<SiteId> sites() {
        return jdbc.sql(SITES)
                .query((row, number) -> new SiteId(row.getObject(1, UUID.class)))
                .list();
    }

    /** The children the hospital has care of to whom anything was done, for a job of the house. */
    List<ChildId> treated(SiteId site) {
        return jdbc.sql(TREATED)
                .param("site", site.value())
                .query((row, number) -> new ChildId(row.getObject("id", UUID.class)))
                .list();
    }

    /** Whether the hospital has care of the child. */
    boolean isHere(SiteId site, ChildId child) {
        return of(IS_HERE, site, child).query(Boolean.class).single();
    }

    void replace(SiteId site, ChildId child, List<PlateCourse> plates) {
        of(DROP, site, child).update();
        plates.forEach(plate -> add(site, plate));
    }

    /** Those placed in the span, by the day. */
    List<Kept> placed(SiteId site, Span span) {
        return jdbc.sql(OF_SITE)
                .param("site", site.value())
                .param("from", span.first())
                .param("to", span.last())
                .query(JdbcOutcomeRepository::kept)
                .list();
    }

    /** Whenever they were placed. */
    List<PlateCourse> all(SiteId site) {
        return jdbc.sql(ALL).param("site", site.value()).query(JdbcOutcomeRepository::kept).list().stream()
                .map(Kept::plate)
                .toList();
    }

    List<PlateCourse> of(SiteId site, ChildId child) {
        return of(OF_CHILD, site, child).query(JdbcOutcomeRepository::kept).list().stream()
                .map(Kept::plate)
                .sorted(PlateCourse.FIRST)
                .toList();
    }

    /** How many children of every hospital, never which. */
    List<Count> counts(Span span) {
        return jdbc.sql(COUNTS)
                .param("from", span.first())
                .param("to", span.last())
                .query((row, number) -> new Count(
                        new SiteId(row.getObject("site_id", UUID.class)),
                        row.getString("what"),
                        row.getString("which"),
                        row.getInt("children")))
                .list();
    }

    private JdbcClient.StatementSpec of(String sql, SiteId site, ChildId child) {
        return jdbc.sql(sql).param("site", site.value()).param("child", child.value());
    }

    private void add(SiteId site, PlateCourse plate) {
        of(ADD, site, plate.child())
                .param("side", plate.physis().side().name())
                .param("bone", plate.physis().bone().name())
                .param("end", plate.physis().end().name())
                .param("plateOn", plate.plateOn())
                .param("leftOut", plate.leftOut().map(Enum::name).orElse((String) null))
                .param("came", plate.came().map(Enum::name).orElse((String) null))
                .param("to", plate.to())
                .param("past", boxed(plate.past()))
                .param("after", plate.after().name())
                .param("drift", boxed(plate.drift()))
                .param("complication", plate.complication())
                .param("back", plate.back())
                .param("diagnosis", plate.mix().diagnosis().name())
                .param("age", plate.mix().ageYears())
                .param("growth", boxed(plate.mix().growthYears()))
                .param("never", boxed(plate.never()))
                .param("reachedOn", plate.reachedOn().orElse((LocalDate) null))
                .update();
    }

    private static Kept kept(ResultSet row, int number) throws SQLException {
        var plate = new PlateCourse(
                new ChildId(row.getObject("child_id", UUID.class)),
                physis(row),
                row.getObject("plate_on", LocalDate.class),
                Optional.ofNullable(row.getString("left_out")).map(LeftOut::valueOf),
                Optional.ofNullable(row.getString("came")).map(Came::valueOf),
                row.getObject("to_day", LocalDate.class),
                number(row, "past_deg"),
                After.valueOf(row.getString("after_release")),
                number(row, "drift_deg"),
                row.getBoolean("complication"),
                row.getBoolean("came_back"),
                new PlateCourse.CaseMix(
                        DiagnosisGroup.valueOf(row.getString("diagnosis")),
                        row.getInt("age_years"),
                        number(row, "growth_years")),
                number(row, "never_foretold"),
                Optional.ofNullable(row.getObject("reached_on", LocalDate.class)));
        return new Kept(plate, row.getString("recorded_site").equals(row.getString("site_id")));
    }

    static PhysisKey physis(ResultSet row) throws SQLException {
        return new PhysisKey(
                Side.valueOf(row.getString("side")),
                Bone.valueOf(row.getString("bone")),
                BoneEnd.valueOf(row.getString("bone_end")));
    }

    static OptionalDouble number(ResultSet row, String column) throws SQLException {
        double value = row.getDouble(column);
        return row.wasNull() ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    static @Nullable Double boxed(OptionalDouble number) {
        return number.isPresent() ? number.getAsDouble() : null;
    }
}
