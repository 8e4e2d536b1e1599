package org.espalier.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.stock.Lot;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfId;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.ShelfLine;
import org.espalier.stock.StockRefusal;
import org.espalier.stock.StockService;
import org.espalier.stock.StockTransferService;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.espalier.treatment.ImplantFinding;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A notice over two hospitals: what is held, who carries it, who sees whom, and when it closes. */
@IntegrationTest
class SafetyServiceIntegrationTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);
    private static final LocalDate BORN = LocalDate.of(2016, 5, 20);

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock stocks;

    @Autowired
    TestSafety test;

    @Autowired
    TestReader reader;

    @Autowired
    StockService stock;

    @Autowired
    StockTransferService transfers;

    @Autowired
    SafetyService safety;

    @Autowired
    IncidentService incidents;

    @Autowired
    Ids ids;

    Sender here;
    Sender there;
    Stocked stockHere;
    Stocked stockThere;

    @BeforeEach
    void twoHospitals() {
        here = reader.surgeon();
        there = reader.surgeon();
        stockHere = stocks.empty(here.site());
        stockThere = stocks.empty(there.site());
    }

    @Test
    void holdsTheLotOnEveryShelfOfTheNetworkAndNowhereElse() {
        var lot = stocks.arrive(stockHere, stockHere.screw(), stockHere.store(), "N1", FAR, 5);
        stocks.arrive(stockHere, stockHere.screw(), stockHere.store(), "N2", FAR, 3);
        stocks.arrive(stockHere, stockHere.screw(), stockHere.tray(), "N1", FAR, 2);
        stocks.arrive(stockHere, stockHere.screw(), stockHere.tray(), "N2", FAR, 2);
        stocks.arrive(stockThere, stockHere.screw(), stockThere.store(), "N1", FAR, 4);
        var moving = stocks.send(stockHere, stockThere, stockHere.screw(), lot);
        test.notice(here.staff(), here.site(), lot);
        assertThat(quantity(stockHere, quarantine(stockHere)))
                .as("four of the store, and the whole slot")
                .isEqualTo(8);
        assertThat(quantity(stockHere, stockHere.store())).isEqualTo(3);
        assertThat(quantity(stockHere, stockHere.tray())).isZero();
        assertThat(quantity(stockThere, quarantine(stockThere))).isEqualTo(4);
        run(stockThere, () -> transfers.receive(moving, stockThere.store()));
        assertThat(quantity(stockThere, quarantine(stockThere)))
                .as("what was on its way is laid aside")
                .isEqualTo(5);
        assertThatThrownBy(() -> stocks.arrive(stockThere, stockHere.screw(), stockThere.store(), "N1", FAR, 1))
                .isInstanceOfSatisfying(StockRefusal.class, refusal -> assertThat(refusal.reason())
                        .isEqualTo(StockRefusal.Reason.HELD));
        assertThat(stocks.as(stockHere, () -> stock.check(stockHere.site()))).isEmpty();
        assertThat(stocks.as(stockThere, () -> stock.check(stockThere.site()))).isEmpty();
    }

    @Test
    void findsWhoCarriesItAndClosesWithTheLastWhoIsTold() {
        var lot = stocks.arrive(stockHere, stockHere.plate(), stockHere.store(), "P1", FAR, 5);
        stocks.arrive(stockThere, stockHere.plate(), stockThere.tray(), "P1", FAR, 2);
        stocks.arrive(stockThere, stockHere.plate(), stockThere.tray(), "P2", FAR, 2);
        var certain = reader.child(here, BORN);
        var former = reader.child(here, BORN);
        var possible = reader.child(there, BORN);
        place(here, certain, stockHere.store(), Optional.of(lot));
        var removed = place(here, former, stockHere.store(), Optional.of(lot));
        test.explant(here.staff(), here.site(), stockHere.plate(), lot, removed);
        place(there, possible, stockThere.tray(), Optional.empty());
        var notice = test.notice(stockHere.keeper(), here.site(), lot);
        assertThat(here.does(() -> safety.carriers(notice)))
                .extracting(Carrier::child, Carrier::certainty)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(certain, Carrier.Certainty.CERTAIN),
                        org.assertj.core.groups.Tuple.tuple(former, Carrier.Certainty.FORMER));
        assertThat(there.does(() -> safety.carriers(notice)))
                .extracting(Carrier::child, Carrier::certainty)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(possible, Carrier.Certainty.POSSIBLE));
        assertThat(progress(notice, here.site())).isEqualTo(new SiteProgress(here.site(), 4, 0, 1, 0, 1, 0));
        assertThat(here.does(() -> safety.told(notice, possible, "not mine to tell")))
                .isFalse();
        assertThat(here.does(() -> safety.told(notice, former, "need not be told")))
                .isFalse();
        assertThat(here.does(() -> safety.told(notice, certain, "by phone, comes on Monday")))
                .isTrue();
        assertThat(here.does(() -> safety.close(notice)))
                .as("one is still to be told")
                .isFalse();
        assertThat(there.does(() -> safety.told(notice, possible, "in clinic"))).isTrue();
        assertThat(here.does(() -> safety.notice(notice)).orElseThrow().isOpen())
                .isFalse();
        assertThat(here.does(() -> safety.told(notice, certain, "once more"))).isFalse();
    }

    @Test
    void knowsTheDayAndTheSurgeonOfTheRecordThatStandsAndTheLotOfTheFirst() {
        var lot = stocks.arrive(stockHere, stockHere.plate(), stockHere.store(), "C1", FAR, 5);
        var child = reader.child(here, BORN);
        var plated = place(here, child, stockHere.store(), Optional.of(lot));
        var notice = test.notice(here.staff(), here.site(), lot);
        test.correct(here.staff(), child, plated, LocalDate.of(2025, 6, 14), "Invented Colleague");
        assertThat(here.does(() -> safety.lookAgain(notice))).hasValue(0);
        assertThat(here.does(() -> safety.carriers(notice))).singleElement().satisfies(carrier -> {
            assertThat(carrier.since()).isEqualTo(LocalDate.of(2025, 6, 14));
            assertThat(carrier.surgeon()).isEqualTo("Invented Colleague");
            assertThat(carrier.certainty()).isEqualTo(Carrier.Certainty.CERTAIN);
        });
        test.breaks(here.staff(), child, plated.implant(), ImplantFinding.Part.BODY);
        assertThat(here.does(() -> incidents.broken(child)))
                .extracting(BrokenPart::lots)
                .containsExactly("C1");
    }

    @Test
    void findsLateWhatWasWrittenDownLate() {
        var lot = stocks.arrive(stockHere, stockHere.plate(), stockHere.tray(), "P1", FAR, 5);
        stocks.arrive(stockHere, stockHere.plate(), stockHere.tray(), "P2", FAR, 1);
        var child = reader.child(here, BORN);
        var notice = test.notice(here.staff(), here.site(), lot);
        assertThat(here.does(() -> safety.carriers(notice))).isEmpty();
        assertThatThrownBy(() -> place(here, child, stockHere.tray(), Optional.empty()))
                .as("it lies in quarantine now")
                .isInstanceOf(StockRefusal.class);
        var again = here.does(() -> safety.open(ids.next(), lot.id(), here.site(), "The same", "again"));
        assertThat(again).as("one notice a lot").isEmpty();
        assertThat(here.does(() -> safety.lookAgain(notice))).hasValue(0);
        assertThat(here.does(() -> safety.close(notice))).isTrue();
    }

    @Test
    void whatBrokeIsReportedWithItsLot() {
        var lot = stocks.arrive(stockHere, stockHere.plate(), stockHere.store(), "P1", FAR, 5);
        var child = reader.child(here, BORN);
        var plated = test.plate(here.staff(), child, stockHere.store(), stockHere.plate(), Optional.of(lot.id()));
        var finding = test.breaks(here.staff(), child, plated.implant(), ImplantFinding.Part.BODY);
        assertThat(here.does(() -> incidents.broken(child))).singleElement().satisfies(broken -> {
            assertThat(broken.lots()).isEqualTo("P1");
            assertThat(broken.product()).contains("Invented plate");
            assertThat(broken.reported()).isFalse();
        });
        assertThat(here.does(() -> incidents.report(child, ids.next(), finding, "broken at the upper hole")))
                .isTrue();
        assertThat(here.does(() -> incidents.report(child, ids.next(), finding, "twice")))
                .isFalse();
        assertThat(here.does(() -> incidents.of(child))).singleElement().satisfies(report -> assertThat(report.what())
                .isEqualTo("broken at the upper hole"));
        assertThat(there.does(() -> incidents.of(child))).isEmpty();
    }

    @Test
    void aBrokenScrewOfAMixedTrayIsReportedWithTheLotsItMayBeOf() {
        stocks.arrive(stockHere, stockHere.screw(), stockHere.tray(), "S1", FAR, 4);
        var child = reader.child(here, BORN);
        var plated = test.plate(here.staff(), child, stockHere.tray(), stockHere.screw(), Optional.empty());
        var second = stocks.empty(here.site());
        stocks.arrive(second, stockHere.screw(), second.tray(), "S1", FAR, 4);
        stocks.arrive(second, stockHere.screw(), second.tray(), "S2", FAR, 4);
        var other = reader.child(here, BORN);
        var mixed = test.plate(here.staff(), other, second.tray(), stockHere.screw(), Optional.empty());
        var screw = test.breaks(here.staff(), child, plated.implant(), ImplantFinding.Part.EPIPHYSEAL_SCREW);
        test.breaks(here.staff(), other, mixed.implant(), ImplantFinding.Part.METAPHYSEAL_SCREW);
        assertThat(here.does(() -> incidents.broken(child)))
                .extracting(BrokenPart::lots)
                .containsExactly("S1");
        assertThat(here.does(() -> incidents.broken(other)))
                .extracting(BrokenPart::lots)
                .containsExactly("one of S1, S2");
        assertThat(here.does(() -> incidents.unreported()))
                .extracting(UnreportedBreak::child)
                .containsExactlyInAnyOrder(child, other);
        assertThat(there.does(() -> incidents.unreported())).isEmpty();
        var number = ids.next();
        assertThat(here.does(() -> incidents.report(child, number, screw, "head broken off")))
                .isTrue();
        assertThat(here.does(() -> incidents.unreported()))
                .extracting(UnreportedBreak::child)
                .containsExactly(other);
        assertThat(here.does(() -> incidents.all()))
                .extracting(DeviceIncident::id)
                .containsExactly(number);
        assertThat(here.does(() -> incidents.find(number)).orElseThrow().site()).isEqualTo(here.site());
        assertThat(there.does(() -> incidents.all())).isEmpty();
        assertThat(there.does(() -> incidents.find(number))).isEmpty();
    }

    private TestSafety.Plated place(Sender surgeon, ChildId child, ShelfId from, Optional<Lot> lot) {
        return test.plate(surgeon.staff(), child, from, stockHere.plate(), lot.map(Lot::id));
    }

    private SiteProgress progress(UUID notice, SiteId site) {
        return here.does(() -> safety.progress(notice)).stream()
                .filter(one -> one.site().equals(site))
                .findFirst()
                .orElseThrow();
    }

    private ShelfId quarantine(Stocked stocked) {
        return stocks.as(stocked, () -> stock.shelves(stocked.site())).stream()
                .filter(shelf -> shelf.kind() == ShelfKind.QUARANTINE)
                .map(Shelf::id)
                .findFirst()
                .orElseThrow();
    }

    private int quantity(Stocked stocked, ShelfId shelf) {
        return stocks.as(stocked, () -> stock.on(shelf)).stream()
                .mapToInt(ShelfLine::quantity)
                .sum();
    }

    private void run(Stocked stocked, Runnable work) {
        stocks.as(stocked, () -> {
            work.run();
            return stocked;
        });
    }
}
