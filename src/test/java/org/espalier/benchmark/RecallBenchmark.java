package org.espalier.benchmark;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Supplier;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.followup.RecallService;

/**
 * A network of 30 hospitals and children in care, a third of them late or without a date: how fast the first page of
 * the recall of one hospital and of the whole network comes, behind the walls and with the look written down; with
 * 10,000 children and with 100,000.
 */
final class RecallBenchmark {

    private static final int SITES = 30;
    private static final int TIMES = 31;
    private static final double SITE_MILLISECONDS = 100;
    private static final double NETWORK_MILLISECONDS = 300;

    private static final String ADD_CHILDREN = """
            insert into child (id, site_id, recorded_site, initials, birth_month, sex, recorded_at, open_visit)
            select gen_random_uuid(), site, site, 'A. B.', date '2014-01-01' + (n % 120) * interval '1 month', 'FEMALE',
                timestamptz '2025-01-01' + n * interval '1 minute', gen_random_uuid()
            from (select n, (cast(:sites as uuid[]))[1 + n % :siteCount] as site
                from generate_series(1, :children) n) numbered
            """;
    private static final String ADD_IDENTITIES = """
            insert into child_identity (child_id, site_id, family_name, given_name, birth_date, local_number, sort_name)
            select id, site_id, 'Invented', 'Child', birth_month, id::text, 'invented child' from child c
            where not exists (select from child_identity i where i.child_id = c.id)
            """;
    private static final String ADD_VISITS = """
            insert into visit (id, site_id, child_id, opened_for, opened_at, look_by, harm, harm_reason)
            select open_visit, site_id, id, 'NEXT_LOOK', recorded_at, current_date + (hashtext(id::text) % 180),
                abs(hashtext(reverse(id::text)) % 1000) / 100.0, 'PAST_TARGET'
            from child c where not exists (select from visit v where v.id = c.open_visit)
            """;

    private final TestNetwork network;
    private final RecallService recall;
    private final SiteId[] sites = new SiteId[SITES];
    private final UUID nurse;

    private RecallBenchmark(TestNetwork network, RecallService recall) {
        this.network = network;
        this.recall = recall;
        Arrays.setAll(sites, number -> new SiteId(network.site()));
        nurse = network.staff(sites[0].value(), "NURSE");
        Arrays.stream(sites).skip(1).forEach(site -> network.member(nurse, site.value(), "NURSE"));
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var context = BenchmarkHouse.open("--espalier.database.durable=false")) {
            met = new RecallBenchmark(context.getBean(TestNetwork.class), context.getBean(RecallService.class)).run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() {
        grow(10_000);
        boolean small = measure(10_000);
        grow(90_000);
        return measure(100_000) && small;
    }

    private boolean measure(int children) {
        double one = median(() -> network.as(nurse, () -> recall.late(List.of(sites[0]), 0)));
        double all = median(() -> network.as(nurse, () -> recall.late(List.of(sites), 0)));
        var page = network.as(nurse, () -> recall.late(List.of(sites), 0));
        say(children + " children, " + page.all() + " on the recall: one hospital", one, SITE_MILLISECONDS);
        say(children + " children: all " + SITES + " hospitals", all, NETWORK_MILLISECONDS);
        return one < SITE_MILLISECONDS
                && all < NETWORK_MILLISECONDS
                && page.lines().size() == RecallService.PAGE;
    }

    private void grow(int children) {
        network.owner().sql("begin; " + inserts(children) + "; commit; analyze").update();
    }

    private String inserts(int children) {
        var ids = Arrays.stream(sites).map(site -> "'" + site.value() + "'").toList();
        return String.join("; ", ADD_CHILDREN, ADD_IDENTITIES, ADD_VISITS)
                .replace("cast(:sites as uuid[])", "array[" + String.join(",", ids) + "]::uuid[]")
                .replace(":siteCount", Integer.toString(SITES))
                .replace(":children", Integer.toString(children));
    }

    private static double median(Supplier<?> work) {
        var times = new double[TIMES];
        for (int i = -10; i < TIMES; i++) {
            long start = System.nanoTime();
            var _ = work.get();
            times[Math.max(0, i)] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(times);
        return times[TIMES / 2];
    }

    private static void say(String what, double milliseconds, double goal) {
        System.out.printf(Locale.ROOT, "%-70s %9.2f ms goal under %.0f%n", what, milliseconds, goal);
    }
}
