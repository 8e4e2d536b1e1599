package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.dao.DataAccessException;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class VisitServiceIntegrationTests {

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    VisitService service;

    @Autowired
    DueByService dueBy;

    @Autowired
    org.espalier.access.SiteService sites;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    LetterService letters;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChild() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        child = new ChildId(ids.next());
        today = network.as(nurse, () -> sites.today(site));
        var data = new ChildData("Invented", "Visited", LocalDate.of(2019, 7, 14), Sex.FEMALE, null);
        network.as(nurse, () -> patients.register(site, child, data));
    }

    @Test
    void registeringOpensAFirstVisit() {
        var visits = visits();

        assertThat(visits.open()).hasValueSatisfying(visit -> {
            assertThat(visit.state()).isEqualTo(VisitState.PLANNED);
            assertThat(visit.openedFor()).isEqualTo(OpenedFor.REGISTERED);
            assertThat(visit.due().lookBy()).isEqualTo(today.plusDays(28));
            assertThat(visit.due().rule()).isEqualTo(DueRule.FIRST_LOOK);
        });
        assertThat(visits.past()).isEmpty();
    }

    @Test
    void careEndsAsMatureOnlyWhenGrowthPlatesWereSeenClosed() {
        var visit = open();
        var mature = new Happening.CareEnded(new CareEnd(Optional.empty(), today, ""));

        assertThat(network.as(nurse, () -> service.record(visit, mature))).isEqualTo(new VisitOutcome.NotSeenClosed());
        assertThat(visits().open()).isPresent();
    }

    @Test
    void arrivingOpensTheNextVisitByTheRules() {
        var next = done(new Happening.Arrived(today, Optional.empty()));

        assertThat(next.openedFor()).isEqualTo(OpenedFor.NEXT_LOOK);
        assertThat(next.due().rule()).isEqualTo(DueRule.WATCHED_OLDER);
        assertThat(next.due().lookBy()).isEqualTo(today.plusMonths(12));
        assertThat(visits().past()).extracting(Visit::state).containsExactly(VisitState.ARRIVED);
        assertThat(visits().steps()).extracting(VisitStep::kind).containsExactly(VisitStep.Kind.ARRIVED);
    }

    @Test
    void whoWasNotBroughtStaysDueAsBefore() {
        var first = open();
        done(new Happening.Booked(Appointment.of(today, null)));
        var again = done(new Happening.NotBrought(today, VisitReason.FORGOTTEN, "grandmother told of the bus"));
        done(new Happening.NotBrought(today, VisitReason.NOT_SAID, ""));

        assertThat(again.due().lookBy()).isEqualTo(first.due().lookBy());
        assertThat(again.appointment()).isEmpty();
        assertThat(visits().notBroughtInARow()).isEqualTo(2);
        done(new Happening.Arrived(today, Optional.empty()));
        assertThat(visits().notBroughtInARow()).isZero();
    }

    @Test
    void refusesToGiveUpTheLastVisitWithoutTheNext() {
        var visit = open();
        var without = new Happening.Cancelled(today, VisitReason.HOSPITAL, "", Optional.empty());
        var with = new Happening.Cancelled(today, VisitReason.HOSPITAL, "", Optional.of(today.plusDays(10)));

        assertThat(network.as(nurse, () -> service.record(visit, without))).isEqualTo(new VisitOutcome.NextMissing());
        assertThat(open().id()).isEqualTo(visit.id());
        assertThat(done(with).due().lookBy()).isEqualTo(today.plusDays(10));
    }

    @Test
    void theDatabaseRefusesAChildInCareWithoutAnOpenVisit() {
        assertThatThrownBy(() -> network.as(
                        nurse, () -> jdbc.sql("""
                        update visit set closed_at = now(), outcome = 'CANCELLED', outcome_on = current_date
                        where child_id = :child""").param("child", child.value()).update()))
                .isInstanceOf(DataAccessException.class)
                .hasMessageContaining("child_open_visit");
        assertThatThrownBy(
                        () -> network.as(nurse, () -> jdbc.sql("update child set open_visit = null where id = :child")
                                .param("child", child.value())
                                .update()))
                .isInstanceOf(DataIntegrityViolationException.class)
                .hasMessageContaining("child_in_care_has_a_visit");
        assertThat(visits().open()).isPresent();
    }

    @Test
    void theDatabaseRefusesASecondOpenVisit() {
        assertThatThrownBy(() -> network.as(nurse, () -> jdbc.sql("""
                        insert into visit (id, site_id, child_id, opened_for, opened_at, look_by)
                        values (:id, :site, :child, 'NEXT_LOOK', now(), current_date)""")
                        .param("id", ids.next())
                        .param("site", site.value())
                        .param("child", child.value())
                        .update()))
                .hasMessageContaining("visit_open");
    }

    @Test
    void whatIsOverStaysAsItWas() {
        done(new Happening.Arrived(today, Optional.empty()));

        assertThatThrownBy(() -> network.owner()
                        .sql("update visit set outcome_on = outcome_on - 1 where child_id = ?"
                                + " and closed_at is not null")
                        .param(child.value())
                        .update())
                .hasMessageContaining("a row of visit is a fact");
    }

    @Test
    void careEndsWithItsReasonAndBeginsAgain() {
        var end = new CareEnd(Optional.of(EndReason.STRAIGHT), today, "both legs straight for two years");
        done(new Happening.CareEnded(end));

        assertThat(visits().open()).isEmpty();
        assertThat(visits().end()).contains(end);
        var asked = new Visit.Asked(today.plusDays(20), "bowed again");
        network.as(nurse, () -> service.resume(child, site, asked));
        assertThat(open().due().lookBy()).isEqualTo(asked.by());
        assertThat(visits().end()).isEmpty();
    }

    @Test
    void theSecondOfTwoHandsIsTold() {
        var seen = open();
        done(new Happening.Booked(Appointment.of(today.plusDays(3), null)));

        var late = new Happening.Booked(Appointment.of(today.plusDays(5), null));
        assertThat(network.as(nurse, () -> service.record(seen, late))).isEqualTo(new VisitOutcome.ChangedMeanwhile());
        assertThat(open().appointment()).contains(Appointment.of(today.plusDays(3), null));
    }

    @Test
    void aSiteSignsItsOwnLimits() {
        var surgeon = network.staff(site.value(), "SURGEON");
        var own = new Limits(14, 4, 6, 3, 3, 14, 42, 3, 5, 3, 2, 2, 1.5, 6, 12, 14, 2);
        network.as(surgeon, () -> {
            dueBy.signLimits(site, own, "agreed at the department's meeting");
            dueBy.renew(child);
            return child;
        });

        assertThat(network.as(nurse, () -> dueBy.limits(site))).isEqualTo(own);
        assertThat(open().due().lookBy()).isEqualTo(today.plusDays(14));
        assertThat(network.as(nurse, () -> dueBy.signedLimits(site)))
                .singleElement()
                .extracting(SignedLimits::reason)
                .isEqualTo("agreed at the department's meeting");
    }

    @Test
    void aProcedureIsTheVisitThatTookPlaceAndOpensTheNext() {
        var surgeon = network.staff(site.value(), "SURGEON");
        var placed = TestTreatment.plate(today, TestTreatment.TIBIA, PlateSide.LATERAL, new ImplantId(ids.next()));
        var next = new NextLook(today.plusDays(11), "wound");
        var recorded = new ProcedureData(today, true, null, null, placed.acts(), next);

        var outcome = network.as(surgeon, () -> treatments.record(child, new ProcedureId(ids.next()), recorded));

        assertThat(outcome).isInstanceOf(RecordOutcome.Recorded.class);
        assertThat(open()).satisfies(visit -> {
            assertThat(visit.openedFor()).isEqualTo(OpenedFor.PROCEDURE);
            assertThat(visit.asked()).contains(new Visit.Asked(next.date(), "wound"));
            assertThat(visit.due().lookBy()).isEqualTo(next.date());
        });
        assertThat(visits().past()).extracting(Visit::state).containsExactly(VisitState.ARRIVED);
        assertThat(done(new Happening.Arrived(today, Optional.empty())).due())
                .extracting(Due::lookBy, Due::rule, Due::film)
                .containsExactly(today.plusDays(14), DueRule.WOUND, false);
    }

    @Test
    void aDeathRecordedWithTreatmentEndsCareAndEveryLetter() {
        var surgeon = network.staff(site.value(), "SURGEON");
        var died = new CareStep(today, null, CareStep.Step.ENDED, CareStep.EndReason.DIED, null);
        network.as(surgeon, () -> facts.record(child, new FactId(ids.next()), died));

        assertThat(visits().open()).isEmpty();
        assertThat(visits().end())
                .hasValueSatisfying(end -> assertThat(end.stopsLetters()).isTrue());
        assertThat(network.as(nurse, () -> letters.letter(child, LetterKind.PLEASE_CALL, LetterLanguage.ENGLISH)))
                .contains(new LetterOutcome.Refused(LetterRefusal.DIED));
    }

    @Test
    void anotherHospitalSeesNoVisit() {
        var elsewhere = network.staff(network.site(), "NURSE");
        var visit = open();
        var booked = new Happening.Booked(Appointment.of(today, null));

        assertThat(network.as(elsewhere, () -> service.of(child)).all()).isEmpty();
        assertThat(network.as(elsewhere, () -> service.record(visit, booked)))
                .isEqualTo(new VisitOutcome.ChangedMeanwhile());
    }

    private Visits visits() {
        return network.as(nurse, () -> service.of(child));
    }

    private Visit open() {
        return visits().open().orElseThrow();
    }

    private Visit done(Happening happening) {
        var visit = open();
        return ((VisitOutcome.Done) network.as(nurse, () -> service.record(visit, happening))).open();
    }
}
