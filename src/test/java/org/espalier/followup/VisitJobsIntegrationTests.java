package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;

import com.icegreen.greenmail.configuration.GreenMailConfiguration;
import com.icegreen.greenmail.junit5.GreenMailExtension;
import com.icegreen.greenmail.util.GreenMailUtil;
import com.icegreen.greenmail.util.ServerSetupTest;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.EmergencyService;
import org.espalier.access.EmergencyTaken;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.platform.Ids;
import org.espalier.platform.Jobs;
import org.espalier.platform.Night;
import org.espalier.science.quantity.Sex;
import org.espalier.treatment.Deformity;
import org.espalier.treatment.Plan;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentFactService;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mail.javamail.JavaMailSenderImpl;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.springframework.transaction.support.TransactionTemplate;

@IntegrationTest
@RecordApplicationEvents
class VisitJobsIntegrationTests {

    @RegisterExtension
    static final GreenMailExtension SERVER = new GreenMailExtension(ServerSetupTest.SMTP.dynamicPort())
            .withConfiguration(GreenMailConfiguration.aConfig().withDisabledAuthentication());

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    LetterService letters;

    @Autowired
    VisitService visits;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    DueByService dueBy;

    @Autowired
    RecallNight night;

    @Autowired
    ObjectProvider<RecallMail> mail;

    @Autowired
    JdbcRecallRepository recall;

    @Autowired
    JdbcLetterheadRepository letterheads;

    @Autowired
    JdbcVisitNightRepository nights;

    @Autowired
    SiteService sites;

    @Autowired
    TransactionTemplate transactions;

    @Autowired
    EmergencyService emergencies;

    @Autowired
    Jobs jobs;

    @Autowired
    Ids ids;

    @Autowired
    ApplicationEvents events;

    SiteId site;
    UUID nurse;
    ChildId child;

    @BeforeEach
    void aChildWithoutADate() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        child = new ChildId(ids.next());
        var data = new ChildData("Nightingale-Canary", "Nora", LocalDate.of(2019, 7, 14), Sex.FEMALE, "N-1");
        network.as(nurse, () -> patients.register(site, child, data));
    }

    @Test
    void sendsNoMailUnlessAServerIsNamed() {
        assertThat(mail.getIfAvailable()).isNull();
    }

    @Test
    void tellsTheStaffHowManyWaitAndNamesNobody() throws Exception {
        network.as(nurse, () -> {
            letters.saveLetterhead(site, new Letterhead("Lantern Road 5", "555-0142", "clinic@harbour.invalid"));
            return site;
        });
        var sender = new JavaMailSenderImpl();
        sender.setHost("localhost");
        sender.setPort(SERVER.getSmtp().getPort());

        var staffMail = new StaffMail(sender, "espalier@harbour.invalid", letterheads, nights, transactions);
        new RecallMail(staffMail, recall, sites).run();

        var message = Arrays.stream(SERVER.getReceivedMessages()).toList();
        assertThat(message).singleElement().satisfies(one -> {
            assertThat(one.getSubject()).isEqualTo("Recall: 1 child waits");
            assertThat(one.getAllRecipients()[0]).hasToString("clinic@harbour.invalid");
            assertThat(GreenMailUtil.getWholeMessage(one))
                    .contains("Open Recall to see who")
                    .doesNotContain("Nightingale", "Nora", "N-1", child.value().toString());
        });
    }

    @Test
    void aHospitalWhoseMailFailsHoldsUpNoOther() {
        var broken = hospitalWithMail("clinic@@harbour invalid@x");
        var next = hospitalWithMail("next@harbour.invalid");
        var sender = new JavaMailSenderImpl();
        sender.setHost("localhost");
        sender.setPort(SERVER.getSmtp().getPort());

        var staffMail = new StaffMail(sender, "espalier@harbour.invalid", letterheads, nights, transactions);
        var asked = new java.util.ArrayList<SiteId>();
        staffMail.toEach("recall-mail", one -> {
            asked.add(one);
            return Optional.of(new StaffMail.Word("Recall", "Open Recall"));
        });

        assertThat(asked).contains(broken, next);
        assertThat(SERVER.getReceivedMessages())
                .extracting(one -> one.getAllRecipients()[0].toString())
                .contains("next@harbour.invalid");
    }

    private SiteId hospitalWithMail(String address) {
        var other = new SiteId(network.site());
        network.as(network.staff(other.value(), "NURSE"), () -> {
            letters.saveLetterhead(other, new Letterhead("Lantern Road 5", "555-0142", address));
            return other;
        });
        return other;
    }

    @Test
    void tellsTheHospitalByMailAtOnceThatAChildWasOpenedInAnEmergencyAndNamesNobody() throws Exception {
        network.as(nurse, () -> {
            letters.saveLetterhead(site, new Letterhead("Lantern Road 5", "555-0142", "clinic@harbour.invalid"));
            return site;
        });
        var surgeon = network.staff(network.site(), "SURGEON");
        network.as(surgeon, () -> emergencies.take(site, "N-1", LocalDate.of(2019, 7, 14), "bleeding, far from home"));
        var taken = events.stream(EmergencyTaken.class)
                .filter(one -> one.site().equals(site))
                .toList();
        assertThat(taken).hasSize(1);
        var sender = new JavaMailSenderImpl();
        sender.setHost("localhost");
        sender.setPort(SERVER.getSmtp().getPort());
        var word = new EmergencyMail(sender, "espalier@harbour.invalid", letterheads, sites, transactions, jobs);

        word.on(taken.getFirst());
        var waits = network.owner()
                .sql("delete from scheduled_tasks where task_name = 'emergency-mail' returning execution_time <= now()")
                .query(Boolean.class)
                .list();
        assertThat(waits).as("one job, due at once").containsExactly(true);
        word.send(site.value().toString());
        network.as(nurse, () -> {
            letters.saveLetterhead(site, new Letterhead("Lantern Road 5", "555-0142"));
            return site;
        });

        assertThat(SERVER.getReceivedMessages()).singleElement().satisfies(one -> {
            assertThat(one.getSubject()).isEqualTo("Emergency access to a child of your hospital");
            assertThat(one.getAllRecipients()[0]).hasToString("clinic@harbour.invalid");
            assertThat(GreenMailUtil.getWholeMessage(one))
                    .contains("Today says who, when and why")
                    .doesNotContain(
                            "Nightingale",
                            "Nora",
                            "N-1",
                            "bleeding",
                            child.value().toString());
        });
    }

    @Test
    void worksTheHarmOfWhoWaitsOutAnewEveryNightOnce() {
        network.owner()
                .sql("update visit set harm = 77 where child_id = ?")
                .param(child.value())
                .update();

        assertThat(aNight().renewed()).isEqualTo(1);
        assertThat(network.as(nurse, () -> visits.of(child))
                        .open()
                        .orElseThrow()
                        .due()
                        .harm())
                .isEqualTo(Harm.OVERDUE);
        assertThat(aNight()).as("done is done").satisfies(again -> {
            assertThat(again.finished()).isTrue();
            assertThat(again.renewed()).isEqualTo(1);
        });
    }

    @Test
    void movesTheDatesOfVisitsAlreadyOpenWhenOtherLimitsAreSigned() {
        var surgeon = network.staff(site.value(), "SURGEON");
        assertThat(aNight().renewed()).isEqualTo(1);
        var before = lookBy();
        network.owner()
                .sql("update visit set appointment_on = look_by where child_id = ?")
                .param(child.value())
                .update();
        assertThat(nextNight().renewed()).as("no one waits, nothing changed").isZero();

        network.as(surgeon, () -> {
            dueBy.signLimits(
                    site, new Limits(35, 6, 12, 3, 3, 14, 42, 3, 6, 4, 2, 2, 1, 6, 12, 14, 2), "we see them later");
            return site;
        });
        assertThat(nextNight().renewed()).isEqualTo(1);
        assertThat(lookBy()).isEqualTo(before.plusDays(7));
        assertThat(nextNight().renewed()).as("once").isZero();
    }

    @Test
    void tellsAHospitalsOwnWaitToItsOwnStaffOnceTenOperationsAreOnRecord() {
        var surgeon = network.staff(site.value(), "SURGEON");
        var today = network.as(nurse, () -> sites.today(site));
        for (int operation = 1; operation <= 10; operation++) {
            assertThat(network.as(surgeon, () -> dueBy.ownWait(site)))
                    .as("after %d operations", operation - 1)
                    .isEmpty();
            operated(surgeon, today.minusDays(70), today.minusDays(9));
        }
        assertThat(network.as(surgeon, () -> dueBy.ownWait(site)))
                .as("61 days, in quarters of a month rounded up")
                .contains(2.25);
        var elsewhere = network.staff(network.site(), "SURGEON");
        assertThat(network.as(elsewhere, () -> dueBy.ownWait(site))).isEmpty();
    }

    /** A child with a plate asked for on one day and placed on another. */
    private void operated(UUID surgeon, LocalDate asked, LocalDate placed) {
        var treated = new ChildId(ids.next());
        var data = new ChildData("Invented", "Waiting", LocalDate.of(2016, 7, 14), Sex.FEMALE, "W-" + ids.next());
        var plate = TestTreatment.plate(placed, TestTreatment.TIBIA, PlateSide.LATERAL, TestTreatment.implant());
        network.as(surgeon, () -> {
            patients.register(site, treated, data);
            facts.record(
                    treated,
                    new FactId(ids.next()),
                    Plan.decided(
                                    asked,
                                    ProcedureKind.PLATE_PLACED,
                                    TestTreatment.TIBIA,
                                    PlateSide.LATERAL,
                                    Deformity.VARUS)
                            .listed(asked, null, null));
            return treatments.record(treated, new ProcedureId(ids.next()), plate);
        });
    }

    private LocalDate lookBy() {
        return network.as(nurse, () -> visits.of(child))
                .open()
                .orElseThrow()
                .due()
                .lookBy();
    }

    /** The night's work as if a day had gone by. */
    private Night nextNight() {
        network.owner()
                .sql("update night_work set night = night - 1 where site_id = ?")
                .param(site.value())
                .update();
        return aNight();
    }

    @Test
    void whatIsKeptBesideTheFactsIsWhatTheyGiveAnew() {
        var plated = new ChildId(ids.next());
        var data = new ChildData("Invented", "Plated", LocalDate.of(2016, 7, 14), Sex.FEMALE, "N-2");
        var surgeon = network.staff(site.value(), "SURGEON");
        var today = network.as(nurse, () -> sites.today(site));
        network.as(surgeon, () -> {
            patients.register(site, plated, data);
            var plate = TestTreatment.plate(
                    today.minusMonths(5), TestTreatment.TIBIA, PlateSide.LATERAL, TestTreatment.implant());
            return treatments.record(plated, new ProcedureId(ids.next()), plate);
        });
        var asked = new Visit.Asked(today.plusDays(20), "a lump at the scar");
        network.as(
                nurse,
                () -> visits.record(
                        visits.of(child).open().orElseThrow(), new Happening.Arrived(today, Optional.of(asked))));
        var kept = derived();

        assertThat(night.rebuild()).isGreaterThanOrEqualTo(2);
        assertThat(derived()).as("rebuilding changes nothing that was right").isEqualTo(kept);

        network.owner()
                .sql("update visit set harm = 77, look_by = look_by + 400, rule = 'FIRST_LOOK', film = not film,"
                        + " risk = 'NOT_KNOWN' where site_id = ? and closed_at is null")
                .param(site.value())
                .update();
        assertThat(derived()).isNotEqualTo(kept);
        night.rebuild();
        assertThat(derived()).as("what was spoiled is as the facts give it").isEqualTo(kept);
    }

    /** All that is worked out of each open visit of the hospital. */
    private List<String> derived() {
        return network.owner().sql("""
                        select (to_jsonb(v) - 'version' - 'rules_mark')::text from visit v
                        where site_id = ? and closed_at is null order by id
                        """).param(site.value()).query(String.class).list();
    }

    private Night aNight() {
        return Callers.callAs(new Caller.SystemAtSite(site.value(), "test"), () -> night.run(site));
    }
}
