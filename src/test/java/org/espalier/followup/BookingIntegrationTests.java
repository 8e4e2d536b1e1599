package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.followup.BookingLine.Effect;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class BookingIntegrationTests {

    private static final String HEADING = "number,booking,date,time,outcome\n";

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    VisitService visits;

    @Autowired
    BookingService bookings;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChildWithANumber() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        child = new ChildId(ids.next());
        today = network.as(nurse, () -> sites.today(site));
        var data = new ChildData("Invented", "Booked", LocalDate.of(2019, 7, 14), Sex.FEMALE, "40317");
        network.as(nurse, () -> patients.register(site, child, data));
    }

    @Test
    void givesADateOnceHoweverOftenTheFileComes() {
        var file = HEADING + "40317,B-9," + today.plusDays(7) + ",09:30,\n";

        assertThat(take(file)).containsExactly(Effect.DATE_GIVEN);
        assertThat(take(file)).containsExactly(Effect.UNCHANGED);
        assertThat(take(HEADING + "40317,B-9," + today.plusDays(8) + ",09:30,\n"))
                .containsExactly(Effect.DATE_MOVED);
        assertThat(visits().open().orElseThrow().appointment())
                .contains(new Appointment(today.plusDays(8), LocalTime.of(9, 30), "B-9"));
        assertThat(visits().steps())
                .extracting(VisitStep::kind, VisitStep::source)
                .containsExactly(
                        tuple(VisitStep.Kind.MOVED, VisitStep.Source.BOOKING_FILE),
                        tuple(VisitStep.Kind.BOOKED, VisitStep.Source.BOOKING_FILE));
    }

    @Test
    void takesWhatBecameOfADateOnce() {
        var missed = HEADING + "40317,B-1," + today.minusDays(1) + ",,not brought\n";
        var came = HEADING + "40317,B-2," + today + ",10:00,ARRIVED\n";

        assertThat(take(missed)).containsExactly(Effect.NOT_BROUGHT);
        assertThat(take(missed)).containsExactly(Effect.UNCHANGED);
        assertThat(visits().notBroughtInARow()).isEqualTo(1);
        assertThat(take(came)).containsExactly(Effect.ARRIVED);
        assertThat(take(missed.strip() + "\n" + came.substring(HEADING.length())))
                .containsExactly(Effect.UNCHANGED, Effect.UNCHANGED);
        assertThat(visits().past()).hasSize(2);
    }

    @Test
    void keepsTheVisitWantedWhenADateIsCancelled() {
        take(HEADING + "40317,B-3," + today.plusDays(3) + ",,\n");
        var cancelled = HEADING + "40317,B-3," + today + ",,cancelled\n";

        assertThat(take(cancelled)).containsExactly(Effect.DATE_TAKEN_BACK);
        assertThat(take(cancelled)).containsExactly(Effect.UNCHANGED);
        assertThat(visits().open())
                .hasValueSatisfying(visit -> assertThat(visit.appointment()).isEmpty());
    }

    @Test
    void previewsWithoutKeepingAnything() {
        var file = HEADING + "40317,B-4," + today.plusDays(7) + ",,\n";

        assertThat(network.as(nurse, () -> bookings.preview(site, file)))
                .extracting(BookingLine::effect)
                .containsExactly(Effect.DATE_GIVEN);
        assertThat(visits().open().orElseThrow().appointment()).isEmpty();
        assertThat(visits().steps()).isEmpty();
    }

    @Test
    void namesTheChildOfEachRowAndWritesDownWhoWasShown() {
        var file = HEADING + "40317,B-4," + today.plusDays(7) + ",,\n" + "40317,B-4,soon,,\n" + "99999,B-6," + today
                + ",,\n";

        var lines = network.as(nurse, () -> bookings.preview(site, file));

        assertThat(lines)
                .extracting(line -> line.child().map(Child::id))
                .containsExactly(Optional.of(child), Optional.of(child), Optional.empty());
        assertThat(network.owner()
                        .sql("select count(*) from access_entry where subject = 'bookings' and :child = any (children)")
                        .param("child", child.value())
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void explainsEveryRowItDoesNotTake() {
        var other = new ChildData("Invented", "Other", LocalDate.of(2018, 7, 14), Sex.MALE, "50001");
        network.as(nurse, () -> patients.register(site, new ChildId(ids.next()), other));
        var file = HEADING
                + "40317,B-5," + today.plusDays(2) + ",,\n"
                + "99999,B-6," + today + ",,\n"
                + "=1+1,B-7," + today + ",,\n"
                + "40317,B-8,3/4/2026,,\n"
                + "40317,B-8," + today + ",half past,\n"
                + "40317,B-8," + today + ",,perhaps\n"
                + "40317,,," + ",\n"
                + "40317,B-8," + today.plusDays(1) + ",,arrived\n"
                + "50001,B-5," + today + ",,\n"
                + "40317,B-8\n";

        assertThat(network.as(nurse, () -> bookings.take(site, file)))
                .extracting(BookingLine::line, line -> line.problem().orElse(null))
                .containsExactly(
                        tuple(2L, null),
                        tuple(3L, BookingProblem.UNKNOWN_NUMBER),
                        tuple(4L, BookingProblem.FORMULA),
                        tuple(5L, BookingProblem.DATE),
                        tuple(6L, BookingProblem.TIME),
                        tuple(7L, BookingProblem.OUTCOME),
                        tuple(8L, BookingProblem.NOTHING_IN_A_CELL),
                        tuple(9L, BookingProblem.OUTCOME_TO_COME),
                        tuple(10L, BookingProblem.OTHER_CHILD),
                        tuple(11L, BookingProblem.COLUMNS));
        assertThat(network.as(nurse, () -> bookings.take(site, "name,day\nx,y\n")))
                .extracting(line -> line.problem().orElseThrow())
                .containsExactly(BookingProblem.COLUMNS);
    }

    @Test
    void readsWhatStandsBeforeABrokenQuotation() {
        var file = HEADING + "40317,B-11," + today.plusDays(2) + ",,\n" + "40317,\"B-12," + today + ",,\n";

        assertThat(network.as(nurse, () -> bookings.preview(site, file)))
                .extracting(BookingLine::line, line -> line.problem().orElse(null))
                .containsExactly(tuple(2L, null), tuple(3L, BookingProblem.QUOTES));
        assertThat(network.as(nurse, () -> bookings.preview(site, "number,number\n1,2\n")))
                .extracting(line -> line.problem().orElseThrow())
                .containsExactly(BookingProblem.COLUMNS);
    }

    @Test
    void knowsNoNumberOfAnotherHospital() {
        var there = new SiteId(network.site());
        var colleague = network.staff(there.value(), "NURSE");
        var file = HEADING + "40317,B-1," + today + ",,\n";

        for (var asked : List.of(there, site)) {
            assertThat(network.as(colleague, () -> bookings.take(asked, file)))
                    .extracting(line -> line.problem().orElseThrow())
                    .containsExactly(BookingProblem.UNKNOWN_NUMBER);
        }
        assertThat(visits().open().orElseThrow().appointment()).isEmpty();
    }

    @Test
    void tellsWhenCareHasEnded() {
        var end = new Happening.CareEnded(new CareEnd(Optional.of(EndReason.DECLINED), today, ""));
        network.as(nurse, () -> visits.record(visits.of(child).open().orElseThrow(), end));

        assertThat(network.as(nurse, () -> bookings.take(site, HEADING + "40317,B-1," + today + ",,\n")))
                .extracting(line -> line.problem().orElseThrow())
                .containsExactly(BookingProblem.NOT_IN_CARE);
    }

    private List<Effect> take(String file) {
        return network.as(nurse, () -> bookings.take(site, file)).stream()
                .map(BookingLine::effect)
                .toList();
    }

    private Visits visits() {
        return network.as(nurse, () -> visits.of(child));
    }
}
