package org.espalier.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.stock.TestStock.Stocked;
import org.springframework.dao.DataAccessException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.TransactionException;

/**
 * Many writers at once on few shelves, while connections are cut under them at random: each asks again with the same id
 * until it is answered, as a scanner on a bad line does.
 */
@Component
public class StockHammer {

    /** What came of it. */
    public record Blows(Stocked stocked, List<UUID> moved, List<UUID> refused, int cut, double seconds) {

        public double perSecond() {
            return (moved.size() + refused.size()) / seconds;
        }
    }

    /**
     * How writers are disturbed.
     *
     * @param everyMilliseconds how long after one blow the next falls; 0 for none
     * @param crash whether the process that serves a connection is killed outright, at which the database ends all the
     *     others and recovers, instead of only being told to end
     */
    public record Cuts(int everyMilliseconds, boolean crash) {

        public static final Cuts NONE = new Cuts(0, false);
    }

    private static final int PIECES = 400;
    private static final int PATIENCE = 200;
    /** The pool hands out a connection unasked that was used within half a second, also one that was cut since. */
    private static final int POOL_TRUSTS_MILLISECONDS = 600;

    private static final LocalDate FAR = LocalDate.of(2040, 1, 31);

    private final TestNetwork network;
    private final TestStock test;
    private final StockService stock;
    private final Ids ids;

    StockHammer(TestNetwork network, TestStock test, StockService stock, Ids ids) {
        this.network = network;
        this.test = test;
        this.stock = stock;
        this.ids = ids;
    }

    /** Lets the writers make so many movements in all. */
    public Blows strike(int writers, int movements, Cuts cuts, int plates) throws Exception {
        var stocked = test.empty(new SiteId(network.site()));
        var lots = new ArrayList<Lot>();
        for (int plate = 0; plate < plates; plate++) {
            var product = plate == 0 ? stocked.plate() : test.product(stocked, ProductKind.PLATE);
            lots.add(test.arrive(stocked, product, stocked.store(), "H-1", FAR, PIECES));
            lots.add(test.arrive(stocked, product, stocked.store(), "H-2", FAR, PIECES));
        }
        test.arrive(stocked, stocked.screw(), stocked.tray(), "H-3", FAR, PIECES);
        test.arrive(stocked, stocked.screw(), stocked.tray(), "H-4", FAR, PIECES);
        var places = places(stocked);
        var moved = java.util.Collections.synchronizedList(new ArrayList<UUID>());
        var refused = java.util.Collections.synchronizedList(new ArrayList<UUID>());
        var over = new AtomicBoolean();
        var cut = new AtomicInteger();
        long start = System.nanoTime();
        try (var pool = Executors.newFixedThreadPool(writers + 1)) {
            Future<?> cutter = cuts.equals(Cuts.NONE) ? null : pool.submit(() -> cut(cuts, over, cut));
            var work = new ArrayList<Callable<Boolean>>();
            for (int writer = 0; writer < writers; writer++) {
                var random = new Random(writer);
                work.add(() -> {
                    for (int done = 0; done < movements / writers; done++) {
                        var move = move(stocked, lots, places, random);
                        (isMoved(stocked, move) ? moved : refused).add(move.id());
                    }
                    return true;
                });
            }
            for (var one : pool.invokeAll(work)) {
                one.get();
            }
            over.set(true);
            if (cutter != null) {
                cutter.get();
                Thread.sleep(POOL_TRUSTS_MILLISECONDS);
            }
        }
        return new Blows(stocked, moved, refused, cut.get(), (System.nanoTime() - start) / 1e9);
    }

    private List<ShelfId> places(Stocked stocked) {
        return test.as(stocked, () -> {
            var places = new ArrayList<>(List.of(stocked.store(), stocked.tray()));
            for (var name : List.of("Second store", "Third store")) {
                places.add(stock.addShelf(stocked.site(), new ShelfData(ShelfKind.STORE, name, null, null)));
            }
            return places;
        });
    }

    private Move move(Stocked stocked, List<Lot> lots, List<ShelfId> places, Random random) {
        int chosen = random.nextInt(lots.size() + 2);
        boolean plate = chosen < lots.size();
        int from = random.nextInt(places.size());
        int to = (from + 1 + random.nextInt(places.size() - 1)) % places.size();
        return new Move(
                ids.next(),
                plate ? lots.get(chosen).product() : stocked.screw().id(),
                plate && !places.get(from).equals(stocked.tray())
                        ? Optional.of(lots.get(chosen).id())
                        : Optional.empty(),
                1 + random.nextInt(3),
                places.get(from),
                places.get(to),
                Optional.empty());
    }

    /** Asks until it is answered; a cut line says nothing about whether it was done. */
    private boolean isMoved(Stocked stocked, Move move) {
        RuntimeException lastCut = new IllegalStateException("never asked");
        for (int asked = 0; asked < PATIENCE; asked++) {
            try {
                test.as(stocked, () -> {
                    stock.move(move);
                    return move;
                });
                return true;
            } catch (StockRefusal refusal) {
                return false;
            } catch (DataAccessException | TransactionException cutOff) {
                lastCut = cutOff;
            }
        }
        throw new AssertionError("no answer after " + PATIENCE + " times", lastCut);
    }

    /** Ends the process that serves a connection of the application, as a fallen network or a restart does. */
    private void cut(Cuts cuts, AtomicBoolean over, AtomicInteger cut) {
        var random = new Random(1);
        while (!over.get()) {
            try {
                Thread.sleep(cuts.everyMilliseconds());
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            var serving = serving();
            if (!serving.isEmpty()) {
                ProcessHandle.of(serving.get(random.nextInt(serving.size())))
                        .ifPresent(cuts.crash() ? ProcessHandle::destroyForcibly : ProcessHandle::destroy);
                cut.incrementAndGet();
            }
        }
    }

    /** Who serves the application; nobody while the database recovers. */
    private List<Long> serving() {
        try {
            return network.owner()
                    .sql("select pid from pg_stat_activity where usename = 'espalier_app'")
                    .query(Long.class)
                    .list();
        } catch (DataAccessException recovering) {
            return List.of();
        }
    }
}
