package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.stock.StockRefusal.Reason;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Counting, sending and keeping for operations, over the real database. */
@IntegrationTest
class CountAndTransferIntegrationTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    CountService counts;

    @Autowired
    StockTransferService transfers;

    @Autowired
    ReservationService reservations;

    @Autowired
    StockOverviewService overview;

    @Autowired
    UseService uses;

    @Autowired
    Ids ids;

    Stocked here;
    Stocked there;

    @BeforeEach
    void twoHospitals() {
        here = test.empty(new SiteId(network.site()));
        there = test.empty(new SiteId(network.site()));
    }

    @Test
    void aCountKeepsWhatWasExpectedAndWhatWasCounted() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", FAR, 5);
        var more = test.arrive(here, here.screw(), here.store(), "S1", FAR, 2);
        var sheet = test.as(here, () -> counts.open(here.store()));
        assertThat(test.as(here, () -> counts.open(here.store())).id())
                .as("one sheet at a time")
                .isEqualTo(sheet.id());
        run(here, () -> counts.count(sheet.id(), here.plate().id(), Optional.of(lot.id()), 3));
        run(here, () -> counts.count(sheet.id(), here.screw().id(), Optional.of(more.id()), 4));
        var closed = test.as(here, () -> counts.close(sheet.id()));
        assertThat(closed.lines()).extracting(CountSheet.Line::difference).containsExactlyInAnyOrder(-2, 2);
        assertThat(test.as(here, () -> stock.on(here.store())))
                .extracting(ShelfLine::quantity)
                .containsExactlyInAnyOrder(3, 4);
        assertThat(test.as(here, () -> stock.check(here.site()))).isEmpty();
        assertThatThrownBy(() ->
                        run(here, () -> counts.count(sheet.id(), here.plate().id(), Optional.of(lot.id()), 9)))
                .isInstanceOf(StockRefusal.class);
    }

    @Test
    void goodsAreTheSendersUntilAnotherPersonSigns() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", FAR, 5);
        var transfer = test.send(here, there, here.plate(), lot);
        assertThat(test.as(here, () -> stock.shelf(transfer)).orElseThrow().site())
                .isEqualTo(here.site());
        assertThat(test.as(there, () -> stock.on(transfer)))
                .singleElement()
                .satisfies(line -> assertThat(line.quantity()).isEqualTo(1));
        network.member(here.keeper(), there.site().value(), "STOREKEEPER");
        assertRefused(() -> run(here, () -> transfers.receive(transfer, there.store())), Reason.SIGNED_BY_SENDER);
        run(there, () -> transfers.receive(transfer, there.store()));
        assertThat(test.as(there, () -> stock.on(there.store())))
                .singleElement()
                .satisfies(line -> assertThat(line.lot()).contains(lot));
        assertThat(test.as(there, () -> transfers.of(there.site())))
                .singleElement()
                .satisfies(one -> assertThat(one.receivedBy()).isPresent());
        assertThat(test.as(there, () -> overview.value(there.site())))
                .as("what it cost goes with it")
                .singleElement()
                .satisfies(value -> assertThat(value.amount()).isEqualByComparingTo("10"));
        assertRefused(() -> run(there, () -> transfers.receive(transfer, there.store())), Reason.CHANGED_MEANWHILE);
        assertThat(test.as(here, () -> stock.check(here.site()))).isEmpty();
        assertThat(test.as(there, () -> stock.check(there.site()))).isEmpty();
    }

    @Test
    void goodsThatWereNotSignedForAreCalledBack() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", FAR, 1);
        var transfer = test.send(here, there, here.plate(), lot);
        assertRefused(() -> run(there, () -> transfers.callBack(transfer, there.store())), Reason.NOT_FROM_THERE);
        run(here, () -> transfers.callBack(transfer, here.store()));
        assertThat(test.as(here, () -> stock.on(here.store()))).hasSize(1);
        assertThat(test.as(here, () -> stock.on(transfer))).isEmpty();
    }

    @Test
    void saysWhichOperationIsLeftShort() {
        test.arrive(here, here.screw(), here.store(), "S1", FAR, 5);
        var first = reserve(LocalDate.of(2030, 1, 1), 4);
        var second = reserve(LocalDate.of(2030, 2, 1), 4);
        assertThat(test.as(here, () -> reservations.coverage(here.site())))
                .extracting(met -> met.reservation().id(), Coverage.Met::missing)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(first.id(), 0),
                        org.assertj.core.groups.Tuple.tuple(second.id(), 3));
        run(here, () -> reservations.end(first.holder()));
        assertThat(test.as(here, () -> reservations.coverage(here.site())))
                .extracting(Coverage.Met::missing)
                .containsExactly(0);
        var instead =
                new Reservation(ids.next(), here.site(), second.holder(), LocalDate.of(2030, 3, 1), second.needs());
        run(here, () -> reservations.reserve(instead));
        assertThat(test.as(here, () -> reservations.open(here.site())))
                .as("one plan keeps once")
                .extracting(Reservation::id)
                .containsExactly(instead.id());
    }

    @Test
    void countsDemandOperationByOperation() {
        var lot = test.arrive(here, here.screw(), here.store(), "S1", FAR, 20);
        var surgeon = network.staff(here.site().value(), "SURGEON");
        for (int size : new int[] {4, 4, 2}) {
            use(surgeon, lot, size);
        }
        assertThat(test.as(here, () -> overview.demand(here.site())))
                .singleElement()
                .satisfies(demand -> {
                    assertThat(demand.operationsBySize()).isEqualTo(java.util.Map.of(4, 2, 2, 1));
                    assertThat(demand.usable()).isEqualTo(10);
                });
    }

    private void use(java.util.UUID surgeon, Lot lot, int size) {
        network.as(
                surgeon,
                () -> uses.use(
                        new Use(ids.next(), here.store(), here.screw().id(), Optional.of(lot.id()), size, ids.next())));
    }

    private Reservation reserve(LocalDate on, int quantity) {
        var reservation =
                new Reservation(ids.next(), here.site(), ids.next(), on, List.of(Need.of(here.screw(), quantity)));
        run(here, () -> reservations.reserve(reservation));
        return reservation;
    }

    private void run(Stocked stocked, Runnable work) {
        test.as(stocked, () -> {
            work.run();
            return stocked;
        });
    }

    private static void assertRefused(org.assertj.core.api.ThrowableAssert.ThrowingCallable work, Reason reason) {
        assertThatThrownBy(work).isInstanceOfSatisfying(StockRefusal.class, refusal -> assertThat(refusal.reason())
                .isEqualTo(reason));
    }
}
