package org.espalier.benchmark;

import java.util.Arrays;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.espalier.TestNetwork;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.SingleConnectionDataSource;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * A million films of a hundred thousand children at thirty sites: what a site's lists cost behind the walls, beside the
 * same statements as the owner of the tables, who passes every wall.
 */
final class PolicyBenchmark {

    private static final int TIMES = 101;
    private static final double LAST_FIFTY_MILLISECONDS = 2;
    private static final double COUNT_TIMES_OPEN = 1.5;
    private static final double CHILD_MILLISECONDS = 2;

    private static final String SITES = """
            insert into site (id, code, name, time_zone)
            select gen_random_uuid(), 'B' || n, 'Bench ' || n, 'UTC' from generate_series(10, 39) n
            """;
    private static final String CHILDREN = """
            insert into child (id, site_id, recorded_site, initials, birth_month, recorded_at, needs_visit)
            select gen_random_uuid(), s.id, s.id, 'B', '2015-03-01', now(), false
            from (select id, row_number() over (order by code) - 1 as place from site where code like 'B__') s
            join generate_series(0, 99999) n on n % 30 = s.place
            """;
    private static final String FILMS = """
            insert into film (id, site_id, recorded_site, child_id, state, kind, sha256, size_bytes, study_date,
                taken_on, width, height, scale_source, recorded_at)
            select gen_random_uuid(), c.site_id, c.site_id, c.id, 'READY', 'DICOM',
                encode(sha256((c.id::text || n)::bytea), 'hex'), 1, date '2015-01-01' + (hashtext(c.id::text || n) &
                    4095),
                date '2015-01-01', 10, 10, 'NONE', now()
            from child c, generate_series(1, 10) n
            """;
    private static final String LAST_FIFTY =
            "select id, study_date from film where site_id = :site order by study_date desc, study_uid limit 50";
    private static final String LAST_FIFTY_UNNAMED =
            "select id, study_date from film order by study_date desc, study_uid limit 50";
    private static final String COUNT = "select count(*) from film where site_id = :site";

    /** The count with every row looked at, as the wall must look at it: without that it is told from an index alone. */
    private static final String COUNT_OF_ROWS =
            "select count(recorded_site) filter (where child_id is not null) from film where site_id = :site";

    private static final String ONE_CHILD = "select id, taken_on from film where child_id = :child order by taken_on";

    private final JdbcClient owner;
    private final JdbcClient jdbc;
    private final TransactionTemplate transactions;
    private final UUID site;
    private final UUID child;
    private final UUID nurse;

    private PolicyBenchmark(TestNetwork network, DataSource owner, JdbcClient jdbc, TransactionTemplate transactions) {
        this.jdbc = jdbc;
        this.transactions = transactions;
        this.owner = JdbcClient.create(owner);
        for (var fill : new String[] {SITES, CHILDREN, FILMS, "vacuum analyze"}) {
            this.owner.sql(fill).update();
        }
        site = this.owner
                .sql("select id from site where code = 'B25'")
                .query(UUID.class)
                .single();
        child = this.owner
                .sql("select id from child where site_id = ? limit 1")
                .param(site)
                .query(UUID.class)
                .single();
        nurse = network.staff(site, "NURSE");
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var context = BenchmarkHouse.open("--espalier.database.durable=false");
                var connection =
                        context.getBean("ownerDataSource", DataSource.class).getConnection()) {
            met = new PolicyBenchmark(
                            context.getBean(TestNetwork.class),
                            new SingleConnectionDataSource(connection, true),
                            context.getBean(JdbcClient.class),
                            context.getBean(TransactionTemplate.class))
                    .run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() {
        double last = compare("last 50 of a site", LAST_FIFTY, true);
        double count = compare("count of a site", COUNT, true);
        double openCount = median(() -> open(COUNT_OF_ROWS));
        say("count of a site, without walls, every row looked at", openCount, "ms");
        say("count of a site, ratio to that", count / openCount, "");
        double one = compare("films of one child", ONE_CHILD, true);
        compare("last 50, the site not named (what lists avoid)", LAST_FIFTY_UNNAMED, false);
        say("goals: last 50 under", LAST_FIFTY_MILLISECONDS, "ms");
        say("goals: count at most, times without walls and every row looked at", COUNT_TIMES_OPEN, "");
        say("goals: one child under", CHILD_MILLISECONDS, "ms");
        return last < LAST_FIFTY_MILLISECONDS && count <= COUNT_TIMES_OPEN * openCount && one < CHILD_MILLISECONDS;
    }

    private double compare(String what, String sql, boolean withOwner) {
        double walled = median(() -> walled(sql));
        say(what + ", behind the walls, median of " + TIMES, walled, "ms");
        if (withOwner) {
            double open = median(() -> open(sql));
            say(what + ", without walls", open, "ms");
            say(what + ", ratio", walled / open, "");
        }
        return walled;
    }

    private int walled(String sql) {
        return Callers.callAs(new Caller.Staff(nurse), () -> transactions.execute(status -> rows(jdbc, sql)));
    }

    private int open(String sql) {
        return rows(owner, sql);
    }

    private int rows(JdbcClient client, String sql) {
        return client.sql(sql)
                .param("site", site)
                .param("child", child)
                .query((row, number) -> row.getObject(1))
                .list()
                .size();
    }

    private static double median(Supplier<?> work) {
        var times = new double[TIMES];
        for (int i = -20; i < TIMES; i++) {
            long start = System.nanoTime();
            var _ = work.get();
            times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[TIMES / 2];
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-75s %9.2f %s%n", what, figure, unit);
    }
}
