package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.stock.StockRefusal.Reason;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * Movements over the real database: what they do, what is refused, and that what is kept follows from what was written.
 */
@IntegrationTest
class StockServiceIntegrationTests {

    private static final LocalDate SOON = LocalDate.of(2031, 1, 31);
    private static final LocalDate LATER = LocalDate.of(2034, 6, 30);
    private static final LocalDate PAST = LocalDate.of(2020, 1, 1);

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    UseService uses;

    @Autowired
    Ids ids;

    Stocked here;
    UUID surgeon;

    @BeforeEach
    void aStockedHospital() {
        here = test.empty(new SiteId(network.site()));
        surgeon = network.staff(here.site().value(), "SURGEON");
    }

    @Test
    void whatComesInLiesOnTheShelfWithItsLot() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        assertThat(on(here.store())).singleElement().satisfies(line -> {
            assertThat(line.quantity()).isEqualTo(5);
            assertThat(line.lot()).contains(lot);
        });
        assertBooksAgree();
    }

    @Test
    void findsOnAShelfByReferenceByLotAndByOneOfTheLotsOfASlot() {
        test.arrive(here, here.plate(), here.tray(), "L%1", SOON, 5);
        test.arrive(here, here.screw(), here.tray(), "M-1", SOON, 5);
        test.arrive(here, here.screw(), here.tray(), "M-2", SOON, 5);
        assertThat(found("m-2")).containsExactly(here.screw().id());
        assertThat(found(here.plate().data().reference()))
                .containsExactly(here.plate().id());
        assertThat(found("%1"))
                .as("a sign of the search is a sign")
                .containsExactly(here.plate().id());
        assertThat(found("")).hasSize(2);
        assertThat(found("nothing like it")).isEmpty();
    }

    private List<ProductId> found(String part) {
        return test.as(here, () -> stock.find(here.tray(), part)).stream()
                .map(line -> line.product().id())
                .toList();
    }

    @Test
    void movesBetweenShelvesAndNeverBelowNothing() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        move(lot, 3, here.store(), shelf(ShelfKind.QUARANTINE));
        assertThatThrownBy(() -> move(lot, 3, here.store(), shelf(ShelfKind.QUARANTINE)))
                .isInstanceOfSatisfying(StockRefusal.class, refusal -> {
                    assertThat(refusal.reason()).isEqualTo(Reason.SHORT);
                    assertThat(refusal.available()).isEqualTo(2);
                    assertThat(refusal.text()).contains("Only 2");
                });
        assertThat(quantity(here.store())).isEqualTo(2);
        assertThat(quantity(shelf(ShelfKind.QUARANTINE))).isEqualTo(3);
        assertBooksAgree();
    }

    @Test
    void theSameMovementSentTwiceHappensOnce() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        var move = new Move(
                ids.next(),
                here.plate().id(),
                Optional.of(lot.id()),
                2,
                here.store(),
                shelf(ShelfKind.QUARANTINE),
                Optional.empty());
        run(() -> stock.move(move));
        run(() -> stock.move(move));
        assertThat(quantity(here.store())).isEqualTo(3);
        var other = new Move(
                move.id(), move.product(), move.lot(), 1, move.from(), move.to(), Optional.of("another number"));
        assertRefused(() -> run(() -> stock.move(other)), Reason.OTHER_MOVEMENT);
    }

    @Test
    void aTrayMixesItsLotsUntilItIsEmpty() {
        var one = test.arrive(here, here.screw(), here.tray(), "S1", LATER, 2);
        assertThat(use(here.tray(), here.screw(), Optional.empty(), 1).certainLot())
                .as("one lot alone came into the slot")
                .contains(one.id());
        var two = test.arrive(here, here.screw(), here.tray(), "S2", LATER, 3);
        test.as(here, () -> {
            stock.trayIsBack(here.tray());
            return here;
        });
        var used = use(here.tray(), here.screw(), Optional.empty(), 2);
        assertThat(used.certainLot()).isEmpty();
        assertThat(used.possibleLots()).containsExactlyInAnyOrder(one.id(), two.id());
        assertThat(used.unitCost()).contains(new UnitCost(java.math.BigDecimal.TEN, TestStock.EURO));
        assertThat(test.as(here, () -> uses.ofLot(one.id())))
                .extracting(LotUse::certain)
                .containsExactly(true, false);
        assertBooksAgree();
        trayIsBack();
        use(here.tray(), here.screw(), Optional.of(two.id()), 2);
        assertThat(on(here.tray())).isEmpty();
        var three = test.arrive(here, here.screw(), here.tray(), "S3", LATER, 1);
        trayIsBack();
        assertThat(use(here.tray(), here.screw(), Optional.empty(), 1).certainLot())
                .contains(three.id());
        assertBooksAgree();
    }

    @Test
    void aLotThatNeverCameIntoTheTrayIsNotTakenFromIt() {
        test.arrive(here, here.screw(), here.tray(), "S1", LATER, 2);
        var elsewhere = test.arrive(here, here.screw(), here.store(), "S2", LATER, 2);
        assertRefused(() -> use(here.tray(), here.screw(), Optional.of(elsewhere.id()), 1), Reason.NOT_OF_THIS_LOT);
    }

    @Test
    void aTrayServesOneOperationADay() {
        test.arrive(here, here.screw(), here.tray(), "S1", LATER, 6);
        use(here.tray(), here.screw(), Optional.empty(), 2);
        assertRefused(() -> use(here.tray(), here.screw(), Optional.empty(), 2), Reason.TRAY_USED_TODAY);
        trayIsBack();
        use(here.tray(), here.screw(), Optional.empty(), 2);
        assertThat(quantity(here.tray())).isEqualTo(2);
    }

    @Test
    void proposesWhatExpiresFirstAndWhatIsExpiredLast() {
        var later = test.arrive(here, here.plate(), here.store(), "L-later", LATER, 1);
        var past = test.arrive(here, here.plate(), here.store(), "L-past", PAST, 1);
        var soon = test.arrive(here, here.plate(), here.store(), "L-soon", SOON, 1);
        var proposals = network.as(
                surgeon, () -> uses.proposals(here.site(), here.plate().id()));
        assertThat(proposals).extracting(one -> one.line().lot().orElseThrow()).containsExactly(soon, later, past);
        assertThat(proposals).extracting(Proposal::expired).containsExactly(false, false, true);
        assertThat(use(here.store(), here.plate(), Optional.of(past.id()), 1).expired())
                .isTrue();
    }

    @Test
    void lotAndHolderTellOfEachOther() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        var holder = ids.next();
        var use = new Use(ids.next(), here.store(), here.plate().id(), Optional.of(lot.id()), 2, holder);
        network.as(surgeon, () -> uses.use(use));
        assertThat(network.as(surgeon, () -> uses.ofLot(lot.id())))
                .containsExactly(new LotUse(holder, use.movement(), here.plate().id(), lot.id(), 2, true));
        assertThat(network.as(surgeon, () -> uses.ofHolder(holder)))
                .singleElement()
                .satisfies(movement -> assertThat(movement.lots()).containsExactly(lot));
        var back = ids.next();
        for (int again = 0; again < 2; again++) {
            network.as(surgeon, () -> {
                uses.takeBack(use.movement(), back, "another child");
                return use;
            });
        }
        assertThat(network.as(surgeon, () -> uses.ofLot(lot.id()))).isEmpty();
        assertThat(quantity(here.store())).isEqualTo(5);
        assertRefused(
                () -> network.as(surgeon, () -> {
                    uses.takeBack(use.movement(), ids.next(), "once more");
                    return use;
                }),
                Reason.TAKEN_BACK_BEFORE);
        assertBooksAgree();
    }

    @Test
    void tellsWhatWasUsedForAProcedureWithItsCostAndNothingTakenBack() {
        var lot = test.arrive(here, here.plate(), here.store(), "COST-1", SOON, 5);
        var holder = ids.next();
        var kept = new Use(ids.next(), here.store(), here.plate().id(), Optional.of(lot.id()), 2, holder);
        var undone = new Use(ids.next(), here.store(), here.plate().id(), Optional.of(lot.id()), 1, holder);
        network.as(surgeon, () -> uses.use(kept));
        network.as(surgeon, () -> uses.use(undone));
        network.as(surgeon, () -> {
            uses.takeBack(undone.movement(), ids.next(), "not opened");
            return undone;
        });
        var used = network.as(surgeon, () -> uses.usedFor(holder));
        assertThat(used).hasSize(1);
        assertThat(used.getFirst().quantity()).isEqualTo(2);
        assertThat(used.getFirst().lots()).containsExactly(lot);
        assertThat(used.getFirst().cost()).contains(new UnitCost(java.math.BigDecimal.TEN, TestStock.EURO));
        assertThat(network.as(surgeon, () -> uses.takenOutBy(holder))).isEmpty();
    }

    @Test
    void whatWasInAChildNeverComesBackToAShelf() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 1);
        var explant = new Explant(
                ids.next(), here.site(), here.plate().id(), List.of(lot.id()), 1, ids.next(), Explant.Fate.ANALYSIS);
        network.as(surgeon, () -> {
            uses.explant(explant);
            return explant;
        });
        assertThat(quantity(shelf(ShelfKind.ANALYSIS))).isEqualTo(1);
        for (var to : List.of(here.store(), here.tray(), shelf(ShelfKind.QUARANTINE), shelf(ShelfKind.SUPPLIER))) {
            assertRefused(() -> move(lot, 1, shelf(ShelfKind.ANALYSIS), to), Reason.NOT_FROM_THERE);
        }
        move(lot, 1, shelf(ShelfKind.ANALYSIS), shelf(ShelfKind.DISPOSED));
        assertBooksAgree();
    }

    @Test
    void anArrivalIsTakenBackWhileItLiesThere() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        var arrived = test.as(here, () -> stock.latest(here.site())).getFirst();
        use(here.store(), here.plate(), Optional.of(lot.id()), 1);
        assertRefused(() -> run(() -> stock.takeBack(arrived, ids.next(), "miscounted")), Reason.SHORT);
        test.arrive(here, here.plate(), here.store(), "L1", SOON, 1);
        run(() -> stock.takeBack(arrived, ids.next(), "miscounted"));
        assertThat(quantity(here.store())).isZero();
        var seen = test.as(here, () -> stock.latest(here.site()));
        assertThat(seen.getFirst().reverses()).contains(arrived.id());
        assertThat(seen).filteredOn(Movement::reversed).extracting(Movement::id).containsExactly(arrived.id());
    }

    @Test
    void aLotHasOneLastDay() {
        test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        assertRefused(() -> test.arrive(here, here.plate(), here.store(), "L1", LATER, 5), Reason.EXPIRY_DIFFERS);
    }

    @Test
    void anotherHospitalSeesAndMovesNothing() {
        var lot = test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        var there = test.empty(new SiteId(network.site()));
        assertThat(test.as(there, () -> stock.shelf(here.store()))).isEmpty();
        assertThat(test.as(there, () -> stock.on(here.store()))).isEmpty();
        assertThat(test.as(there, () -> stock.latest(here.site()))).isEmpty();
        var taking = new Move(
                ids.next(), here.plate().id(), Optional.of(lot.id()), 1, here.store(), there.store(), Optional.empty());
        assertRefused(
                () -> test.as(there, () -> {
                    stock.move(taking);
                    return taking;
                }),
                Reason.NOT_THERE);
        assertThat(test.as(there, () -> catalogue.lot(lot.id())))
                .as("the catalogue is the network's")
                .contains(lot);
    }

    @Test
    void findsWhatDoesNotAgreeAndMakesItAnew() {
        test.arrive(here, here.plate(), here.store(), "L1", SOON, 5);
        test.arrive(here, here.screw(), here.tray(), "S1", SOON, 4);
        test.arrive(here, here.screw(), here.tray(), "S2", SOON, 4);
        var site = here.site().value();
        network.owner()
                .sql("update stock_balance set quantity = 7 where site_id = ? and product_id = ?")
                .params(site, here.plate().id().value())
                .update();
        network.owner()
                .sql("delete from stock_slot_lot where site_id = ?")
                .param(site)
                .update();
        assertThat(test.as(here, () -> stock.check(here.site()))).hasSize(3).anySatisfy(one -> assertThat(one)
                .contains("kept 7, moved 5"));
        run(() -> stock.rebuild(here.site()));
        assertBooksAgree();
        assertThat(quantity(here.store())).isEqualTo(5);
    }

    private void assertBooksAgree() {
        assertThat(test.as(here, () -> stock.check(here.site()))).isEmpty();
    }

    private Used use(ShelfId from, Product product, Optional<LotId> lot, int quantity) {
        return network.as(surgeon, () -> uses.use(new Use(ids.next(), from, product.id(), lot, quantity, ids.next())));
    }

    private void move(Lot lot, int quantity, ShelfId from, ShelfId to) {
        run(() -> stock.move(
                new Move(ids.next(), lot.product(), Optional.of(lot.id()), quantity, from, to, Optional.empty())));
    }

    private void trayIsBack() {
        run(() -> stock.trayIsBack(here.tray()));
    }

    private void run(Runnable work) {
        test.as(here, () -> {
            work.run();
            return here;
        });
    }

    private ShelfId shelf(ShelfKind kind) {
        return test.as(here, () -> stock.shelves(here.site())).stream()
                .filter(shelf -> shelf.kind() == kind)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private List<ShelfLine> on(ShelfId shelf) {
        return test.as(here, () -> stock.on(shelf));
    }

    private int quantity(ShelfId shelf) {
        return on(shelf).stream().mapToInt(ShelfLine::quantity).sum();
    }

    private static void assertRefused(org.assertj.core.api.ThrowableAssert.ThrowingCallable work, Reason reason) {
        assertThatThrownBy(work).isInstanceOfSatisfying(StockRefusal.class, refusal -> assertThat(refusal.reason())
                .isEqualTo(reason));
    }
}
