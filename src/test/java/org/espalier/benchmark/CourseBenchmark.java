package org.espalier.benchmark;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.espalier.TestNetwork;
import org.espalier.course.Course;
import org.espalier.course.CourseService;
import org.espalier.course.CourseSheet;
import org.espalier.film.TestDoor;
import org.espalier.patient.ChildId;
import org.espalier.reading.TestReader;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * A child with 60 films, both limbs read on each: how long its course takes to open, beside the same rows fetched by
 * plain statements as the same role behind the same walls. In both the look is written down, for one that is not must
 * not be.
 */
final class CourseBenchmark {

    private static final int FILMS = 60;
    private static final int WARM_UP = 150;
    private static final int TIMES = 201;
    private static final double OPENED_MILLISECONDS = 300;
    private static final double MOST_TIMES_PLAIN = 1.5;

    private static final String CHILD = """
            select c.id, c.site_id, c.version, c.initials, c.birth_month, c.sex, i.family_name, i.given_name,
                i.birth_date, i.local_number
            from child c left join child_identity i on i.child_id = c.id where c.id = :child
            """;
    private static final String FILMS_OF_CHILD = """
            select id, site_id, child_id, version, state, kind, taken_on, view, width, height, scale_source,
                mm_per_px_x,
                mm_per_px_y, magnification, aside_reason, sha256, size_bytes, recorded_at
            from film where site_id = :site and child_id = :child order by taken_on, recorded_at, id
            """;
    private static final String READINGS_OF_CHILD = """
            select r.id, r.site_id, r.child_id, r.film_id, r.reader, s.name, r.started_at, r.signed_at, r.limbs,
                r.calibration, r.mm_per_px_x, r.mm_per_px_y, r.ball_diameter_mm, r.ball_diameter_px, r.taken, r.screws,
                r.second_of, r.supersedes, r.reason, later.id
            from reading r
            join staff s on s.id = r.reader
            left join reading later on later.supersedes = r.id
            where r.site_id = :site and r.child_id = :child
            order by r.signed_at desc, r.id desc
            """;
    private static final String NUMBERS_OF_CHILD = """
            select reading_id, side, quantity, value, doubtful
            from reading_number where site_id = :site and child_id = :child
            """;

    /**
     * What else the course shows: examinations, visits, what was planned and done; each table read whole for the child.
     */
    private static final List<String> OTHERS = List.of(
            "body_size",
            "bone_age",
            "diagnosis",
            "clinical_examination",
            "lab_result",
            "bone_disease",
            "imaging_report",
            "tibia_vara_stage",
            "visit",
            "visit_step",
            "care_change",
            "procedure_session",
            "procedure_act",
            "treatment_plan",
            "treatment_target",
            "implant_finding",
            "physis_maturity",
            "care_step",
            "complication",
            "theatre_check",
            "physis",
            "side_reversal");

    private static final String SITE = "select id, code, name, time_zone from site where id = :site";
    private static final String DRAFTS = "select id, kind, subject from draft where staff_id = current_staff()";
    private static final String LOOK = """
            insert into access_entry (id, at, staff_id, site_id, deed, subject, children)
            values (gen_random_uuid(), now(), current_staff(), :site, 'OPENED', 'course', array[:child])
            """;

    private final TestNetwork network;
    private final CourseService courses;
    private final JdbcClient jdbc;
    private final TestDoor.Sender surgeon;
    private final ChildId child;

    private CourseBenchmark(TestReader reader, TestNetwork network, CourseService courses, JdbcClient jdbc) {
        this.network = network;
        this.courses = courses;
        this.jdbc = jdbc;
        surgeon = reader.surgeon();
        child = reader.child(surgeon, LocalDate.of(2010, 2, 1));
        IntStream.range(0, FILMS)
                .mapToObj(film -> LocalDate.of(2012, 1, 15).plusMonths(3L * film))
                .forEach(day -> reader.signed(surgeon, reader.film(surgeon, child, day)));
        network.owner().sql("analyze").update();
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var context = BenchmarkHouse.open()) {
            met = new CourseBenchmark(
                            context.getBean(TestReader.class),
                            context.getBean(TestNetwork.class),
                            context.getBean(CourseService.class),
                            context.getBean(JdbcClient.class))
                    .run();
        }
        System.exit(met ? 0 : 1);
    }

    /** Each way is tried in turn, so that whatever else the machine does is shared by all. */
    private boolean run() {
        var plain = new double[TIMES];
        var opened = new double[TIMES];
        var shown = new double[TIMES];
        for (int i = -WARM_UP; i < TIMES; i++) {
            int at = Math.max(0, i);
            plain[at] = milliseconds(this::plainly);
            opened[at] = milliseconds(() -> open());
            shown[at] = milliseconds(() -> CourseSheet.of(open()));
        }
        double ratio = median(opened) / median(plain);
        say("the same rows in plain SQL, the look written down", median(plain), "ms, median of " + TIMES);
        say("course of " + FILMS + " films opened", median(opened), "ms, goal under " + OPENED_MILLISECONDS);
        say("opened and laid out with every text", median(shown), "ms, goal under " + OPENED_MILLISECONDS);
        say("opened, times plain SQL", ratio, "goal at most " + MOST_TIMES_PLAIN);
        return median(shown) < OPENED_MILLISECONDS && ratio <= MOST_TIMES_PLAIN;
    }

    private Course open() {
        return surgeon.does(() -> courses.open(child)).orElseThrow();
    }

    /** Every row and column once, and the look written down, in one transaction. */
    private Integer plainly() {
        return network.as(surgeon.staff(), () -> {
            jdbc.sql(LOOK)
                    .param("site", surgeon.site().value())
                    .param("child", child.value())
                    .update();
            OTHERS.forEach(table -> rows("select * from " + table + " where child_id = :child", 1));
            return rows(SITE, 4)
                    + rows(DRAFTS, 3)
                    + rows(CHILD, 10)
                    + rows(FILMS_OF_CHILD, 18)
                    + rows(READINGS_OF_CHILD, 20)
                    + rows(NUMBERS_OF_CHILD, 5);
        });
    }

    private int rows(String sql, int columns) {
        return jdbc.sql(sql)
                .param("site", surgeon.site().value())
                .param("child", child.value())
                .query((row, number) -> {
                    var values = new Object[columns];
                    for (int i = 0; i < columns; i++) {
                        values[i] = row.getObject(i + 1);
                    }
                    return values;
                })
                .list()
                .size();
    }

    private static double milliseconds(Supplier<?> work) {
        long start = System.nanoTime();
        var _ = work.get();
        return (System.nanoTime() - start) / 1e6;
    }

    private static double median(double[] times) {
        var sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-55s %9.2f %s%n", what, figure, unit);
    }
}
