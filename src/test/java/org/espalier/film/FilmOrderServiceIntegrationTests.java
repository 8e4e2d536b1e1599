package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.sql.SQLException;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.followup.Appointment;
import org.espalier.followup.Happening;
import org.espalier.followup.VisitService;
import org.espalier.patient.AffectedSides;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class FilmOrderServiceIntegrationTests {

    private static final FilmWish.Film LONG = new FilmWish.Film(
            AffectedSides.BOTH,
            FilmProtocol.LONG_STANDING,
            new FilmWish.Lift(Side.LEFT, Length.ofMillimetres(15)),
            true,
            "near target");
    private static final FilmWish NONE = new FilmWish.NoFilm("last film four months ago");
    private static final DoseAreaProduct DOSE =
            new DoseAreaProduct(new BigDecimal("12.5"), DoseAreaProduct.Unit.CGY_CM2);

    @Autowired
    FilmOrderService orders;

    @Autowired
    PatientService patients;

    @Autowired
    TestNetwork network;

    @Autowired
    TestOrders testOrders;

    @Autowired
    VisitService visits;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Ids ids;

    @Autowired
    Clock clock;

    SiteId site;
    UUID surgeon;
    UUID radiographer;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChild() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
        radiographer = network.staff(site.value(), "RADIOGRAPHER");
        today = LocalDate.ofInstant(clock.instant(), ZoneId.of("Europe/Lisbon"));
        child = register("Filmed");
    }

    @Test
    void keepsAllOfAnOrderOnceAndPutsItOnTheListOfItsDay() {
        var id = new FilmOrderId(ids.next());
        order(id, child, today, LONG);
        order(id, child, today, LONG);
        var line = worklist(today).getFirst();
        assertThat(worklist(today)).hasSize(1);
        assertThat(line.child().id()).isEqualTo(child);
        assertThat(line.orders()).singleElement().satisfies(order -> {
            assertThat(order.wish()).isEqualTo(LONG);
            assertThat(order.isOpen()).isTrue();
            assertThat(order.by()).startsWith("Test person");
        });
        assertThat(worklist(today.plusDays(1))).isEmpty();
    }

    @Test
    void saysThatNoFilmIsNeeded() {
        order(child, today, NONE);
        assertThat(worklist(today).getFirst().orders())
                .singleElement()
                .satisfies(order -> assertThat(order.wish()).isEqualTo(NONE))
                .satisfies(order -> assertThat(order.isOpen()).isFalse());
        var id = of(child).id();
        assertThat(network.as(radiographer, () -> orders.happened(id, ids.next(), new FilmHappening.Taken(null))))
                .isFalse();
    }

    @Test
    void goesOnAfterARejectedExposureAndEndsOnce() {
        order(child, today, LONG);
        var id = of(child).id();
        var rejected = new FilmHappening.Rejected(FilmHappening.RejectReason.PATELLA_NOT_FORWARD, DOSE);
        happened(id, rejected);
        assertThat(of(child).isOpen()).isTrue();
        happened(id, new FilmHappening.Taken(DOSE));
        assertThat(of(child).isOpen()).isFalse();
        assertThat(of(child).steps())
                .extracting(FilmOrderStep::what)
                .containsExactly(rejected, new FilmHappening.Taken(DOSE));
        assertThat(network.as(
                        radiographer, () -> orders.happened(id, ids.next(), new FilmHappening.NotTaken("went home"))))
                .isFalse();
        assertThat(of(child).steps()).hasSize(2);
    }

    @Test
    void keepsOneOfTwoEndsWrittenAtOnce() {
        order(child, today, LONG);
        var id = of(child).id();
        happened(id, new FilmHappening.NotTaken("has a fever"));
        assertThatThrownBy(() -> network.owner()
                        .sql("insert into film_order_step (id, site_id, recorded_site, child_id, order_id, kind,"
                                + " recorded_at) select ?, site_id, site_id, child_id, id, 'TAKEN', now()"
                                + " from film_order where id = ?")
                        .params(ids.next(), id.value())
                        .update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("23505"));
    }

    @Test
    void carriesWhatIsNotTakenOntoTheListOfToday() {
        testOrders.overdue(site, child, today.minusDays(7));
        assertThat(worklist(today)).hasSize(1);
        happened(of(child).id(), new FilmHappening.Withdrawn("moved away"));
        assertThat(worklist(today)).isEmpty();
    }

    @Test
    void listsAChildWhoComesAndOfWhomNobodySaidAnything() {
        var booked = new Happening.Booked(Appointment.of(today, null));
        network.as(surgeon, () -> visits.record(visits.of(child).open().orElseThrow(), booked));
        assertThat(worklist(today)).singleElement().satisfies(line -> {
            assertThat(line.expected()).isTrue();
            assertThat(line.orders()).isEmpty();
            assertThat(line.films()).isZero();
        });
        assertThat(worklist(today.plusDays(1))).isEmpty();
    }

    @Test
    void refusesADayGoneBy() {
        assertThatThrownBy(() -> order(child, today.minusDays(1), LONG)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void setsChildrenWithNothingLeftToDoLast() {
        var second = register("Aaron");
        order(second, today, NONE);
        order(child, today, LONG);
        assertThat(worklist(today)).extracting(line -> line.child().id()).containsExactly(child, second);
    }

    @Test
    void hidesOrdersFromAnotherHospital() {
        order(child, today, LONG);
        var stranger = network.staff(network.site(), "SURGEON");
        assertThat(network.as(stranger, () -> orders.of(child))).isEmpty();
        assertThat(network.as(stranger, () -> orders.worklist(site, today))).isEmpty();
        var id = of(child).id();
        assertThat(network.as(stranger, () -> orders.happened(id, ids.next(), new FilmHappening.Taken(null))))
                .isFalse();
        for (var table : new String[] {"film_order", "film_order_step"}) {
            assertThat(network.as(stranger, () -> jdbc.sql("select count(*) from " + table)
                            .query(Long.class)
                            .single()))
                    .isZero();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update film_order set reason = 'x'",
                "delete from film_order",
                "update film_order_step set reason = 'x'",
                "delete from film_order_step"
            })
    void stopsTheOwnerFromChangingAnOrder(String statement) {
        order(child, today, LONG);
        happened(of(child).id(), new FilmHappening.Taken(null));
        assertThatThrownBy(() -> network.owner().sql(statement).update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES002"));
    }

    private ChildId register(String family) {
        var id = new ChildId(ids.next());
        var data = new ChildData(family, "Fay", LocalDate.of(2018, 3, 4), Sex.FEMALE, null);
        network.as(surgeon, () -> patients.register(site, id, data));
        return id;
    }

    private void order(ChildId whose, LocalDate day, FilmWish wish) {
        order(new FilmOrderId(ids.next()), whose, day, wish);
    }

    private void order(FilmOrderId id, ChildId whose, LocalDate day, FilmWish wish) {
        network.as(surgeon, () -> {
            orders.order(id, whose, day, wish);
            return id;
        });
    }

    private void happened(FilmOrderId id, FilmHappening what) {
        assertThat(network.as(radiographer, () -> orders.happened(id, ids.next(), what)))
                .isTrue();
    }

    private FilmOrder of(ChildId whose) {
        return network.as(surgeon, () -> orders.of(whose)).getFirst();
    }

    private java.util.List<WorklistLine> worklist(LocalDate day) {
        return network.as(radiographer, () -> orders.worklist(site, day));
    }
}
