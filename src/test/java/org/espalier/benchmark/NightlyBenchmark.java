package org.espalier.benchmark;

import java.util.Locale;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.espalier.prognosis.TestNight;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;

/**
 * The night's work over ten sites: 10,000 children, then 100,000, a tenth of them with plates on both tibiae and three
 * films. The first night makes every forecast, learns, and makes them anew by what was learnt; the second finds nothing
 * to do; then one in a hundred of the treated has a new film; then nothing has changed. Read beside it: one plain count
 * of the same children.
 */
final class NightlyBenchmark {

    private static final double GOAL_SECONDS = 120;
    private static final int SITES = 10;

    private static final String ADD_SITES = """
            insert into site (id, code, name, time_zone)
            select gen_random_uuid(), 'B' || n, 'Bench ' || n, 'UTC' from generate_series(10, 9 + :sites) n
            """;
    private static final String ADD_READER = """
            insert into staff (id, login, name, kind) values (gen_random_uuid(), 'bench', 'Bench', 'person')
            """;
    private static final String ADD_CHILDREN = """
            with born as (
                insert into child
                    (id, site_id, recorded_site, initials, birth_month, sex, recorded_at, needs_visit)
                select gen_random_uuid(), s.id, s.id, 'B', '2016-03-01', 'FEMALE', now(), false
                from (select id, row_number() over (order by code) - 1 as place from site where code like 'B__') s
                join generate_series(1, :children) n on n % 10 = s.place
                returning id, site_id),
            named as (
                insert into child_identity
                    (child_id, site_id, family_name, given_name, birth_date, local_number, sort_name)
                select id, site_id, 'Bench', 'Child', '2016-03-12', left(id::text, 30), 'bench child' from born
                returning child_id),
            limbs as (
                insert into limb (id, site_id, child_id, side)
                select gen_random_uuid(), site_id, id, side from born, unnest(array['RIGHT', 'LEFT']) side
                returning id, site_id, child_id)
            insert into physis (id, site_id, child_id, limb_id, bone, bone_end)
            select gen_random_uuid(), site_id, child_id, id, bone, bone_end
            from limbs, (values ('FEMUR', 'DISTAL'), ('TIBIA', 'PROXIMAL')) of (bone, bone_end)
            """;

    /** A tenth is treated: those whose id ends so. */
    private static final String TREAT = """
            with treated as (
                select c.id, c.site_id from child c
                where hashtext(c.id::text) % 10 = 0
                and not exists (select from procedure_session p where p.child_id = c.id)),
            sessions as (
                insert into procedure_session (id, site_id, recorded_site, child_id, done_on, next_on, next_why,
                    recorded_at)
                select gen_random_uuid(), site_id, site_id, id, '2026-01-12', '2026-04-12', 'film', now() from treated
                returning id, site_id, child_id)
            insert into procedure_act (session_id, number, site_id, recorded_site, child_id, kind, side, bone, bone_end,
                plate_side, implant, implants, implant_count)
            select id, number, site_id, site_id, child_id, 'PLATE_PLACED', side, 'TIBIA', 'PROXIMAL', 'LATERAL',
                gen_random_uuid(), 'plate, 2 screws', 3
            from sessions, (values (1, 'RIGHT'), (2, 'LEFT')) of (number, side)
            """;

    private static final String FILM = """
            with treated as (
                select p.child_id, p.site_id from procedure_session p
                where abs(hashtext(p.child_id::text || :day)) % 100 < :percent
                and not exists (select from film f where f.child_id = p.child_id and f.taken_on = cast(:day as date))),
            films as (
                insert into film (id, site_id, recorded_site, child_id, state, kind, sha256, size_bytes, study_date,
                    taken_on, width, height, scale_source, recorded_at)
                select gen_random_uuid(), site_id, site_id, child_id, 'READY', 'DICOM',
                    encode(sha256((child_id::text || :day)::bytea), 'hex'), 1, cast(:day as date), cast(:day as date),
                        10, 10,
                    'NONE', now()
                from treated returning id, site_id, child_id),
            readings as (
                insert into reading (id, site_id, recorded_site, child_id, film_id, reader, started_at, signed_at,
                    marks,
                    limbs, calibration, taken)
                select gen_random_uuid(), f.site_id, f.site_id, f.child_id, f.id, s.id, now(), now(), '{}', 'BOTH',
                    'NONE',
                    '{"stance": "STANDING_ALONE"}'
                from films f, staff s where s.login = 'bench' returning id, site_id, child_id)
            insert into reading_number
                (reading_id, site_id, recorded_site, child_id, side, quantity, value, unit, doubtful)
            select r.id, r.site_id, r.site_id, r.child_id, side, quantity, value + (hashtext(r.id::text) % 100) / 100.0,
                'deg', false
            from readings r, unnest(array['RIGHT', 'LEFT']) side,
                (values ('mMPTA', cast(:tibia as double precision)), ('mLDFA', 88), ('JLCA', 1)) of (quantity, value)
            """;

    private final JdbcClient owner;
    private final TestNight night;

    private NightlyBenchmark(JdbcClient owner, TestNight night) {
        this.owner = owner;
        this.night = night;
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var context = BenchmarkHouse.open("--espalier.database.durable=false");
                var connection =
                        context.getBean("ownerDataSource", DataSource.class).getConnection()) {
            met = new NightlyBenchmark(
                            JdbcClient.create(new SingleConnectionDataSource(connection, true)),
                            context.getBean(TestNight.class))
                    .run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() {
        owner.sql(ADD_SITES).param("sites", SITES).update();
        owner.sql(ADD_READER).update();
        int small = 10_000;
        int large = 100_000;
        measure(small, small);
        return measure(large - small, large) < GOAL_SECONDS;
    }

    /** The seconds of the slowest later night. */
    private double measure(int added, int children) {
        owner.sql(ADD_CHILDREN).param("children", added).update();
        owner.sql(TREAT).update();
        film("2026-01-05", 100, 78);
        film("2026-04-20", 100, 80.5);
        film("2026-08-03", 100, 83);
        owner.sql("vacuum analyze").update();
        double first = night(children, "every forecast made, learnt from, made anew");
        night(children, "the night after, nothing changed");
        film("2026-11-02", 1, 85);
        double changed = night(children, "one in a hundred of the treated changed");
        double nothing = night(children, "nothing changed");
        double count = seconds(
                () -> owner.sql("select count(*) from child").query(Long.class).single());
        say(children, "a plain count of them, to compare", count);
        say(children, "the first night, for the record", first);
        return Math.max(changed, nothing);
    }

    private void film(String day, int percent, double tibia) {
        owner.sql(FILM)
                .param("day", day)
                .param("percent", percent)
                .param("tibia", tibia)
                .update();
    }

    private double night(int children, String what) {
        owner.sql("update night_work set night = night - 1").update();
        long before = rows();
        double taken = seconds(() -> {
            night.run();
            return children;
        });
        say(children, what + ", " + (rows() - before) + " forecasts kept", taken);
        return taken;
    }

    private long rows() {
        return owner.sql("select count(*) from forecast").query(Long.class).single();
    }

    private static double seconds(Supplier<?> work) {
        long start = System.nanoTime();
        var _ = work.get();
        return (System.nanoTime() - start) / 1e9;
    }

    private static void say(int children, String what, double seconds) {
        System.out.printf(Locale.ROOT, "%,9d children: %-75s %9.2f s%n", children, what, seconds);
    }
}
