package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.course.CourseService;
import org.espalier.kit.Who;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;

@IntegrationTest
class EmergencyIntegrationTests {

    private static final LocalDate BORN = LocalDate.of(2018, 3, 4);
    private static final String WHY = "pin site bleeding, family far from home";

    @Autowired
    EmergencyService emergencies;

    @Autowired
    PatientService patients;

    @Autowired
    CourseService courses;

    @Autowired
    AccessLogService log;

    @Autowired
    StaffService staff;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    JdbcClient jdbc;

    SiteId owner;
    ChildId child;
    String number;
    UUID surgeon;

    @BeforeEach
    void aChildAndASurgeonElsewhere() {
        var sender = reader.surgeon();
        owner = sender.site();
        child = reader.child(sender, BORN);
        number = String.valueOf(sender.does(() -> patients.open(child, "course"))
                .flatMap(Child::data)
                .orElseThrow()
                .localNumber());
        surgeon = network.staff(network.site(), "SURGEON");
    }

    private EmergencyAnswer take(UUID who, String asked, LocalDate born) {
        return network.as(who, () -> emergencies.take(owner, asked, born, WHY));
    }

    private boolean opens(UUID who) {
        boolean course = network.as(who, () -> courses.open(child)).isPresent();
        var rows = network.as(who, () -> jdbc.sql("select count(*) from limb where child_id = ?")
                .param(child.value())
                .query(Long.class)
                .single());
        assertThat(rows > 0).isEqualTo(course);
        return course;
    }

    @Test
    void opensTheChildByNameForADayToTheSurgeonWhoAskedAndNobodyElse() {
        assertThat(opens(surgeon)).isFalse();
        var taken = (EmergencyAnswer.Taken) take(surgeon, number, BORN);
        assertThat(taken.child()).isEqualTo(child.value());
        assertThat(opens(surgeon)).isTrue();
        assertThat(network.as(
                        surgeon,
                        () -> patients.open(child, "course").orElseThrow().who()))
                .isInstanceOf(Who.Named.class);
        var mine = network.as(surgeon, () -> emergencies.mine());
        assertThat(mine).singleElement().satisfies(one -> assertThat(one.until())
                .isEqualTo(one.taken().plusSeconds(24 * 3600)));
        assertThat(opens(network.staff(network.site(), "SURGEON"))).isFalse();
    }

    @Test
    void changesNothingInTheRecord() {
        take(surgeon, number, BORN);
        assertThatThrownBy(() -> network.as(surgeon, () -> jdbc.sql("insert into limb (id, site_id, child_id, side)"
                                + " values (gen_random_uuid(), ?, ?, 'LEFT')")
                        .params(owner.value(), child.value())
                        .update()))
                .rootCause()
                .hasMessageContaining("row-level security");
        assertThat(network.as(surgeon, () -> jdbc.sql("update child set initials = 'X' where id = ?")
                        .param(child.value())
                        .update()))
                .isZero();
    }

    @Test
    void endsAfterADay() {
        take(surgeon, number, BORN);
        var database = network.owner();
        database.sql("alter table emergency_access disable trigger emergency_access_stays")
                .update();
        database.sql("update emergency_access set valid = tstzrange(now() - interval '25 hours',"
                        + " now() - interval '1 hour') where staff_id = ?")
                .param(surgeon)
                .update();
        database.sql("alter table emergency_access enable trigger emergency_access_stays")
                .update();
        assertThat(opens(surgeon)).isFalse();
        assertThat(network.as(surgeon, () -> emergencies.mine())).isEmpty();
    }

    @Test
    void tellsTheOwningHospitalAtOnceWhoAndWhyAndNobodyElse() {
        take(surgeon, number, BORN);
        for (var role : List.of("SURGEON", "NURSE", "PRIVACY_OFFICER")) {
            var there = network.staff(owner.value(), role);
            assertThat(network.as(there, () -> emergencies.told()))
                    .as(role)
                    .singleElement()
                    .satisfies(one -> {
                        assertThat(one.staff().value()).isEqualTo(surgeon);
                        assertThat(one.who()).matches("Test person \\d+ \\(Test hospital \\d+\\)");
                        assertThat(one.reason()).isEqualTo(WHY);
                        assertThat(one.review()).isNull();
                    });
        }
        var elsewhere = network.staff(network.site(), "PRIVACY_OFFICER");
        assertThat(network.as(elsewhere, () -> emergencies.told())).isEmpty();
    }

    @Test
    void endsAtOnceWhenThePrivacyOfficerFindsItNotJustified() {
        take(surgeon, number, BORN);
        var officer = network.staff(owner.value(), "PRIVACY_OFFICER");
        var id = network.as(officer, () -> emergencies.told()).getFirst().id();
        assertThat(network.as(officer, () -> emergencies.review(id, false, "no emergency known")))
                .isTrue();
        assertThat(opens(surgeon)).isFalse();
        assertThat(network.as(officer, () -> emergencies.review(id, true, "changed my mind")))
                .isFalse();
        assertThat(network.as(officer, () -> emergencies.told()).getFirst().review())
                .satisfies(review -> assertThat(review.justified()).isFalse());
    }

    @Test
    void staysForItsDayWhenItWasJustified() {
        take(surgeon, number, BORN);
        var officer = network.staff(owner.value(), "PRIVACY_OFFICER");
        var id = network.as(officer, () -> emergencies.told()).getFirst().id();
        network.as(officer, () -> emergencies.review(id, true, "called back, all right"));
        assertThat(opens(surgeon)).isTrue();
    }

    @Test
    void isReviewedByTheOwningHospitalsOfficerAlone() {
        take(surgeon, number, BORN);
        var nurse = network.staff(owner.value(), "NURSE");
        var id = network.as(nurse, () -> emergencies.told()).getFirst().id();
        var elsewhere = network.staff(network.site(), "PRIVACY_OFFICER");
        assertThat(network.as(elsewhere, () -> emergencies.review(id, false, "not mine")))
                .isFalse();
        assertThatThrownBy(() -> network.as(nurse, () -> emergencies.review(id, true, "mine")))
                .isInstanceOf(AccessDeniedException.class);
        assertThat(opens(surgeon)).isTrue();
    }

    @Test
    void answersAWrongNumberAWrongDayAndAHospitalOfOnesOwnAlike() {
        assertThat(take(surgeon, "nobody-has-this", BORN)).isEqualTo(new EmergencyAnswer.NotFound());
        assertThat(take(surgeon, number, BORN.plusDays(1))).isEqualTo(new EmergencyAnswer.NotFound());
        assertThat(take(network.staff(owner.value(), "SURGEON"), number, BORN))
                .isEqualTo(new EmergencyAnswer.NotFound());
        assertThat(opens(surgeon)).isFalse();
    }

    @Test
    void slowsDownWhoeverTriesNumbersAndWritesEachTryToTheOwningHospitalsLog() {
        for (int attempt = 0; attempt < 6; attempt++) {
            assertThat(take(surgeon, "try-" + attempt, BORN)).isEqualTo(new EmergencyAnswer.NotFound());
        }
        assertThat(take(surgeon, number, BORN)).isInstanceOf(EmergencyAnswer.Wait.class);
        assertThat(opens(surgeon)).isFalse();
        var officer = network.staff(owner.value(), "PRIVACY_OFFICER");
        assertThat(network.as(officer, () -> log.recent()).lines())
                .filteredOn(line -> line.deed() == AccessDeed.EMERGENCY)
                .hasSize(7)
                .noneMatch(line -> line.subject().contains("try-"));
    }

    @Test
    void isForSurgeonsAloneAndEndsWhenTheyLeave() {
        var nurse = network.staff(network.site(), "NURSE");
        assertThatThrownBy(() -> take(nurse, number, BORN)).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> network.as(nurse, () -> jdbc.sql(
                                "select outcome from take_emergency_access(gen_random_uuid(), ?, ?, ?, ?, now())")
                        .params(owner.value(), number, BORN, WHY)
                        .query(String.class)
                        .single()))
                .rootCause()
                .hasMessageContaining("only a surgeon");
        take(surgeon, number, BORN);
        network.as(network.operator(), () -> {
            staff.shutOut(new StaffId(surgeon));
            return surgeon;
        });
        assertThat(network.as(surgeon, () -> jdbc.sql("select count(*) from child where id = ?")
                        .param(child.value())
                        .query(Long.class)
                        .single()))
                .isZero();
    }

    @Test
    void showsOnThePageOfWhoSawTheChildFromWhichHospitalTheyCame() {
        take(surgeon, number, BORN);
        opens(surgeon);
        var nurse = network.staff(owner.value(), "NURSE");
        var seen = network.as(nurse, () -> log.whoSaw(child.value())).orElseThrow();
        assertThat(seen.looks()).extracting(Look::deed).contains(AccessDeed.EMERGENCY, AccessDeed.OPENED);
        assertThat(network.as(surgeon, () -> log.whoSaw(child.value()))).isEmpty();
    }
}
