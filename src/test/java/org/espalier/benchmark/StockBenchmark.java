package org.espalier.benchmark;

import java.util.ArrayList;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import org.espalier.TestNetwork;
import org.espalier.platform.Ids;
import org.espalier.stock.StockHammer;
import org.espalier.stock.StockService;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Eight writers and 20,000 movements beside the bare insert of the same row in the same run; then with connections cut
 * under them, then with the database crashing under them.
 */
final class StockBenchmark {

    private static final int WRITERS = 8;
    private static final int MOVEMENTS = 20_000;
    private static final int PLATES = 100;
    private static final double TIMES_THE_BARE_INSERT = 3;

    private static final String BARE_TABLE = """
            create table bench_movement (like stock_movement including all);
            alter table bench_movement add foreign key (product_id) references stock_product;
            alter table bench_movement add foreign key (from_site, from_shelf) references stock_shelf (site_id, id);
            alter table bench_movement add foreign key (to_site, to_shelf) references stock_shelf (site_id, id);
            alter table bench_movement enable row level security;
            create policy bench_add on bench_movement for insert
                with check (from_site = any((select my_sites_as('STOREKEEPER'))::uuid[]));
            grant insert on bench_movement to espalier_app
            """;
    private static final String BARE_INSERT = """
            insert into bench_movement (id, product_id, quantity, from_shelf, from_site, to_shelf, to_site, recorded_at)
            values (:id, :product, 1, :from, :site, :to, :site, current_timestamp)
            """;
    private final TestNetwork network;
    private final StockHammer hammer;
    private final StockService stock;
    private final JdbcClient jdbc;
    private final Ids ids;
    private boolean met = true;

    private StockBenchmark(org.springframework.context.ApplicationContext house) {
        network = house.getBean(TestNetwork.class);
        hammer = house.getBean(StockHammer.class);
        stock = house.getBean(StockService.class);
        jdbc = house.getBean(JdbcClient.class);
        ids = house.getBean(Ids.class);
    }

    public static void main(String[] arguments) throws Exception {
        boolean met;
        try (var house = BenchmarkHouse.open()) {
            met = new StockBenchmark(house).run();
        }
        System.exit(met ? 0 : 1);
    }

    private boolean run() throws Exception {
        hammer.strike(WRITERS, MOVEMENTS / 5, StockHammer.Cuts.NONE, PLATES);
        var blows = hammer.strike(WRITERS, MOVEMENTS, StockHammer.Cuts.NONE, PLATES);
        double bare = bareInserts(blows.stocked());
        say("movements a second, 8 writers", blows.perSecond(), "");
        say("bare inserts a second, 8 writers, the same row", bare, "");
        demand("time of a movement, times the bare insert", bare / blows.perSecond(), TIMES_THE_BARE_INSERT);
        var cut = hammer.strike(WRITERS, MOVEMENTS, new StockHammer.Cuts(250, false), 1);
        say("connections cut under 20,000 movements", cut.cut(), "");
        settled(cut);
        crashes();
        return met;
    }

    /**
     * The process that serves a connection is killed outright: the database ends all connections and recovers from its
     * log.
     */
    private void crashes() throws Exception {
        var crashed = hammer.strike(WRITERS, MOVEMENTS, new StockHammer.Cuts(2_000, true), 1);
        say("crashes of the database under 20,000 movements", crashed.cut(), "");
        settled(crashed);
    }

    private void settled(StockHammer.Blows blows) {
        var here = blows.stocked();
        demand(
                "lines that do not equal their movements after it",
                network.as(here.keeper(), () -> stock.check(here.site())).size(),
                0);
        int written = network.owner()
                .sql("select count(*) from stock_movement where from_site = ? and id = any(?)")
                .params(here.site().value(), blows.moved().toArray(UUID[]::new))
                .query(Integer.class)
                .single();
        demand("acknowledged movements lost or doubled", Math.abs(blows.moved().size() - written), 0);
        int negative = network.owner()
                .sql("select count(*) from stock_balance where site_id = ? and quantity < 0")
                .param(here.site().value())
                .query(Integer.class)
                .single();
        demand("lines below nothing", negative, 0);
    }

    private double bareInserts(org.espalier.stock.TestStock.Stocked here) throws Exception {
        for (var statement : BARE_TABLE.split(";")) {
            network.owner().sql(statement).update();
        }
        insertBare(here, MOVEMENTS / 10);
        long start = System.nanoTime();
        insertBare(here, MOVEMENTS);
        return MOVEMENTS / ((System.nanoTime() - start) / 1e9);
    }

    private void insertBare(org.espalier.stock.TestStock.Stocked here, int rows) throws Exception {
        var insert = new ArrayList<Callable<Integer>>();
        for (int writer = 0; writer < WRITERS; writer++) {
            insert.add(() -> {
                for (int row = 0; row < rows / WRITERS; row++) {
                    network.as(here.keeper(), () -> jdbc.sql(BARE_INSERT)
                            .param("id", ids.next())
                            .param("product", here.plate().id().value())
                            .param("from", here.store().value())
                            .param("to", here.tray().value())
                            .param("site", here.site().value())
                            .update());
                }
                return rows;
            });
        }
        try (var pool = Executors.newFixedThreadPool(WRITERS)) {
            for (var one : pool.invokeAll(insert)) {
                one.get();
            }
        }
    }

    private void demand(String what, double figure, double atMost) {
        met &= figure <= atMost;
        System.out.printf(Locale.ROOT, "%-70s %10.2f goal at most %.0f%n", what, figure, atMost);
    }

    private static void say(String what, double figure, String unit) {
        System.out.printf(Locale.ROOT, "%-70s %10.2f %s%n", what, figure, unit);
    }
}
