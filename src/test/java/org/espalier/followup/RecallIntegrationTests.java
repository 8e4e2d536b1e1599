package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.LimbCondition;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class RecallIntegrationTests {

    private static final AtomicInteger COUNT = new AtomicInteger();

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    VisitService visits;

    @Autowired
    RecallService recall;

    @Autowired
    FamilyService families;

    @Autowired
    TransferService transfers;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;
    LocalDate today;

    @BeforeEach
    void aHospital() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        today = network.as(nurse, () -> sites.today(site));
    }

    @Test
    void ranksByHarmThenByWhoIsDueFirst() {
        var quiet = child();
        var late = child();
        var harmed = child();
        var inTime = child();
        due(late, today.minusDays(40), 0, "OVERDUE");
        due(harmed, today.minusDays(3), 4.5, "PAST_TARGET");
        book(inTime, today.plusDays(5));

        assertThat(late().lines())
                .extracting(line -> line.child().id())
                .containsExactly(harmed, late, quiet)
                .doesNotContain(inTime);
        assertThat(late().lines())
                .extracting(RecallLine::why)
                .containsExactly(RecallLine.Why.LATE, RecallLine.Why.LATE, RecallLine.Why.NO_DATE);
        assertThat(late().all()).isEqualTo(3);
    }

    @Test
    void tellsADateThatPassedFromOneThatComesTooLate() {
        var passed = child();
        var tooLate = child();
        book(passed, today.minusDays(1));
        book(tooLate, today.plusDays(60));

        assertThat(late().lines())
                .extracting(line -> line.child().id(), RecallLine::why)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple(passed, RecallLine.Why.NOT_SAID_WHETHER_CAME),
                        org.assertj.core.groups.Tuple.tuple(tooLate, RecallLine.Why.DATE_TOO_LATE));
    }

    @Test
    void proposesTheGentlestWayNotTriedYet() {
        var child = child();
        assertThat(line(child).proposed())
                .as("nobody to call without a telephone")
                .isEqualTo(Channel.LETTER);
        var known =
                new Family(0, List.of(new Phone("555-0142", "grandmother", "pt")), "pt", true, null, null, null, null);
        network.as(nurse, () -> families.save(site, child, known));
        assertThat(line(child).proposed()).isEqualTo(Channel.CALL);

        tried(child, Channel.CALL, AttemptOutcome.NO_ANSWER, null);
        assertThat(line(child).proposed()).isEqualTo(Channel.MESSAGE);
        assertThat(line(child).last()).hasValueSatisfying(last -> {
            assertThat(last.outcome()).isEqualTo(AttemptOutcome.NO_ANSWER);
            assertThat(last.next()).contains(new Attempt.Next("call in the evening", Optional.of(today.plusDays(1))));
        });
    }

    @Test
    void leavesAFamilyAloneThatIsNotToBeContacted() {
        var child = child();
        var quiet = new Family(0, List.of(), "en", false, null, null, "a court forbade it", "the ward sister");
        network.as(nurse, () -> families.save(site, child, quiet));

        assertThat(line(child).proposed()).isEqualTo(Channel.SAFEGUARDING_LEAD);
        assertThatThrownBy(() -> tried(child, Channel.CALL, AttemptOutcome.REACHED, null))
                .hasMessageContaining("not to be contacted");
        tried(child, Channel.SAFEGUARDING_LEAD, AttemptOutcome.REACHED, null);
        assertThat(line(child).tried()).isEqualTo(1);
    }

    @Test
    void asksConsentBeforeOthersAreAsked() {
        assertThatThrownBy(() -> attempt(Channel.SCHOOL, AttemptOutcome.REACHED, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(attempt(Channel.SCHOOL, AttemptOutcome.REACHED, "the mother").consentOf())
                .contains("the mother");
    }

    @Test
    void remindsFourteenAndTwoDaysBefore() {
        var child = child();
        book(child, today.plusDays(15));
        assertThat(reminders()).isEmpty();
        book(child, today.plusDays(14));
        assertThat(reminders()).hasSize(1);
        tried(child, Channel.MESSAGE, AttemptOutcome.REMINDED, null);
        assertThat(reminders()).isEmpty();

        var aFortnightOn = child();
        book(aFortnightOn, today.plusDays(3));
        tried(aFortnightOn, reminded(today.minusDays(11)));
        assertThat(reminders()).isEmpty();
        book(aFortnightOn, today.plusDays(2));
        assertThat(reminders()).as("once more two days before").hasSize(1);
        tried(aFortnightOn, reminded(today));
        assertThat(reminders()).isEmpty();
    }

    private static Attempt reminded(LocalDate on) {
        return new Attempt(
                on, Channel.MESSAGE, AttemptOutcome.REMINDED, Optional.empty(), Optional.empty(), Optional.empty());
    }

    @Test
    void showsNothingOfAnotherHospital() {
        child();
        var elsewhere = network.staff(network.site(), "NURSE");

        assertThat(network.as(elsewhere, () -> recall.late(List.of(site), 0))).isEqualTo(new Recall(List.of(), 0));
    }

    @Test
    void aFamilyThatMovedPassesWithItsRecordWhenTheOtherHospitalAccepts() {
        var child = child();
        book(child, today.plusDays(5));
        tried(child, Channel.CALL, AttemptOutcome.MOVED, null);
        var there = new SiteId(network.site());
        var colleague = network.staff(there.value(), "NURSE");
        var asked = network.as(nurse, () -> transfers.ask(child, there, "moved to the coast"));

        assertThat(network.as(nurse, () -> visits.of(child)).open())
                .as("the old hospital keeps the visit until the other accepts")
                .isPresent();
        assertThat(network.as(colleague, () -> visits.of(child)).open()).isEmpty();
        assertThat(network.as(colleague, () -> transfers.open()))
                .singleElement()
                .satisfies(one -> assertThat(one.childName()).startsWith("Invented"));

        var before = network.as(nurse, () -> visits.of(child)).open().orElseThrow();
        assertThat(network.as(colleague, () -> transfers.accept(asked.id()))).isPresent();

        var after = network.as(colleague, () -> visits.of(child));
        assertThat(after.open()).hasValueSatisfying(visit -> {
            assertThat(visit.id()).isEqualTo(before.id());
            assertThat(visit.due().lookBy()).isEqualTo(before.due().lookBy());
            assertThat(visit.appointment()).isEmpty();
        });
        assertThat(after.steps()).extracting(VisitStep::kind).contains(VisitStep.Kind.CAME_WITH_TRANSFER);
        assertThat(network.as(colleague, () -> recall.attempts(child))).hasSize(1);
        assertThat(network.as(colleague, () -> recall.late(List.of(there), 0)).lines())
                .hasSize(1);
        assertThat(network.as(nurse, () -> patients.open(child, "visits"))).isEmpty();
        assertThat(network.as(nurse, () -> recall.late(List.of(site), 0)).lines())
                .isEmpty();
        assertThat(rowsLeftBehind(child))
                .as("tables with rows still at the old hospital")
                .isEmpty();
        assertThat(network.as(colleague, () -> transfers.accept(asked.id())))
                .as("accepted once")
                .isEmpty();
        assertThat(network.as(nurse, () -> transfers.handedOver()))
                .as("the old hospital is told where the child is")
                .singleElement()
                .satisfies(one -> {
                    assertThat(one.to()).isEqualTo(there);
                    assertThat(one.answeredOn()).hasValue(today);
                });
        assertThat(network.as(colleague, () -> transfers.handedOver())).isEmpty();
        assertThat(careSteps(nurse, child)).as("its own word").containsExactly("LEFT TRANSFERRED", "RIGHT TRANSFERRED");
        assertThat(network.as(colleague, () -> treatments.of(child)).limbs())
                .as("taken up, so in care as before")
                .allSatisfy(limb -> assertThat(limb.conditions()).isEmpty());
    }

    @Test
    void aLimbLetGoStaysLetGoAtTheOtherHospital() {
        var child = child();
        var step = new CareStep(today, Side.LEFT, CareStep.Step.ENDED, CareStep.EndReason.STRAIGHT, null);
        network.as(nurse, () -> facts.record(child, new FactId(ids.next()), step));
        var there = new SiteId(network.site());
        var colleague = network.staff(there.value(), "NURSE");
        var asked = network.as(nurse, () -> transfers.ask(child, there, "moved to the coast"));
        network.as(colleague, () -> transfers.accept(asked.id()));
        assertThat(careSteps(nurse, child)).containsExactly("LEFT ENDED", "RIGHT TRANSFERRED");
        assertThat(network.as(colleague, () -> treatments.of(child))
                        .limb(Side.LEFT)
                        .conditions())
                .containsOnlyKeys(LimbCondition.ENDED);
    }

    /** What the database tells this person of the child's care. */
    private List<String> careSteps(UUID staff, ChildId child) {
        return network.as(
                staff, () -> jdbc.sql("select side || ' ' || step from care_step where child_id = ? order by 1")
                        .param(child.value())
                        .query(String.class)
                        .list());
    }

    @Test
    void onlyTheHospitalThatWasAskedAccepts() {
        var child = child();
        var asked = network.as(nurse, () -> transfers.ask(child, new SiteId(network.site()), "moved away"));
        var stranger = network.staff(network.site(), "NURSE");

        assertThat(network.as(stranger, () -> transfers.accept(asked.id()))).isEmpty();
        assertThat(network.as(nurse, () -> transfers.accept(asked.id()))).isEmpty();
        assertThat(network.as(stranger, () -> transfers.decline(asked.id(), "not ours")))
                .isFalse();
        assertThat(network.as(nurse, () -> transfers.withdraw(asked.id(), "they stay")))
                .isTrue();
    }

    /** Every table that holds rows of a child beside their site, the log of accesses apart. */
    private List<String> rowsLeftBehind(ChildId child) {
        return network.owner().sql("""
                        select a.table_name from information_schema.columns a join information_schema.columns b
                            on a.table_schema = b.table_schema and a.table_name = b.table_name
                        where a.table_schema = 'espalier' and a.column_name = 'site_id' and b.column_name = 'child_id'
                            and a.table_name not in ('access_entry')
                        """).query(String.class).list().stream()
                .filter(table -> network.owner()
                                .sql("select count(*) from " + table + " where child_id = :child and site_id = :site")
                                .param("child", child.value())
                                .param("site", site.value())
                                .query(Long.class)
                                .single()
                        > 0)
                .toList();
    }

    private ChildId child() {
        var child = new ChildId(ids.next());
        var number = "V" + COUNT.incrementAndGet();
        var data = new ChildData("Invented", "Child", LocalDate.of(2019, 7, 14), Sex.MALE, number);
        network.as(nurse, () -> patients.register(site, child, data));
        return child;
    }

    private void due(ChildId child, LocalDate lookBy, double harm, String reason) {
        network.owner()
                .sql("update visit set look_by = ?, harm = ?, harm_reason = ? where child_id = ? and closed_at is null")
                .params(lookBy, harm, reason, child.value())
                .update();
    }

    private void book(ChildId child, LocalDate on) {
        network.as(nurse, () -> visits.record(open(child), new Happening.Booked(Appointment.of(on, null))));
    }

    private Visit open(ChildId child) {
        return visits.of(child).open().orElseThrow();
    }

    private void tried(ChildId child, Channel channel, AttemptOutcome outcome, @Nullable String consent) {
        tried(child, attempt(channel, outcome, consent));
    }

    private void tried(ChildId child, Attempt attempt) {
        network.as(nurse, () -> {
            recall.tried(open(child), attempt);
            return child;
        });
    }

    private Attempt attempt(Channel channel, AttemptOutcome outcome, @Nullable String consent) {
        return new Attempt(
                today,
                channel,
                outcome,
                Optional.ofNullable(consent),
                Optional.empty(),
                Optional.of(new Attempt.Next("call in the evening", Optional.of(today.plusDays(1)))));
    }

    private Recall late() {
        return network.as(nurse, () -> recall.late(List.of(site), 0));
    }

    private RecallLine line(ChildId child) {
        return late().lines().stream()
                .filter(line -> line.child().id().equals(child))
                .findFirst()
                .orElseThrow();
    }

    private List<Reminder> reminders() {
        return network.as(nurse, () -> recall.reminders(site));
    }
}
