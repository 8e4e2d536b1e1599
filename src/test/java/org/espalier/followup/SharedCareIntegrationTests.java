package org.espalier.followup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
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

@IntegrationTest
class SharedCareIntegrationTests {

    @Autowired
    SharedCareService shared;

    @Autowired
    TransferService transfers;

    @Autowired
    PatientService patients;

    @Autowired
    CourseService courses;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    JdbcClient jdbc;

    UUID surgeon;
    ChildId child;
    SiteId other;
    UUID nurse;
    SharedCare asked;

    @BeforeEach
    void aHospitalThatIsAsked() {
        var sender = reader.surgeon();
        surgeon = sender.staff();
        child = reader.child(sender, LocalDate.of(2018, 3, 4));
        other = new SiteId(network.site());
        nurse = network.staff(other.value(), "NURSE");
        asked = network.as(surgeon, () -> shared.ask(child, other, "physiotherapy there"));
    }

    private boolean opens(UUID who) {
        return network.as(who, () -> courses.open(child)).isPresent();
    }

    private boolean accepts(UUID who) {
        return network.as(who, () -> shared.accept(asked.id()));
    }

    @Test
    void opensNothingUntilTheOtherHospitalAccepts() {
        assertThat(opens(nurse)).isFalse();
        assertThat(network.as(nurse, () -> shared.open())).containsExactly(asked);
        assertThat(accepts(nurse)).isTrue();
        assertThat(opens(nurse)).isTrue();
        assertThat(network.as(nurse, () -> patients.open(child, "course"))
                        .map(Child::who)
                        .orElseThrow())
                .isInstanceOf(Who.Named.class);
    }

    @Test
    void isForThoseWhoTreatThereAlone() {
        accepts(nurse);
        assertThat(opens(network.staff(other.value(), "SURGEON"))).isTrue();
        assertThat(opens(network.staff(other.value(), "RADIOGRAPHER"))).isTrue();
        assertThat(opens(network.staff(other.value(), "AUDITOR"))).isFalse();
        assertThat(opens(network.staff(network.site(), "SURGEON"))).isFalse();
        var storekeeper = network.staff(other.value(), "STOREKEEPER");
        assertThat(network.as(storekeeper, () -> jdbc.sql("select count(*) from child where id = ?")
                        .param(child.value())
                        .query(Long.class)
                        .single()))
                .isZero();
    }

    @Test
    void cannotBeAcceptedByTheHospitalThatAsksNorByAThird() {
        assertThatThrownBy(() -> accepts(surgeon)).rootCause().hasMessageContaining("row-level security");
        assertThat(accepts(network.staff(network.site(), "SURGEON"))).isFalse();
        assertThat(opens(nurse)).isFalse();
    }

    @Test
    void isDeclinedWithAReasonAndOpensNothing() {
        assertThat(network.as(nurse, () -> shared.decline(asked.id(), "no place")))
                .isTrue();
        assertThat(accepts(nurse)).isFalse();
        assertThat(opens(nurse)).isFalse();
    }

    @Test
    void isEndedByEitherHospitalAndCanBeAskedAgain() {
        accepts(nurse);
        assertThat(network.as(nurse, () -> shared.end(asked.id(), "treatment done here")))
                .isTrue();
        assertThat(opens(nurse)).isFalse();
        asked = network.as(surgeon, () -> shared.ask(child, other, "again"));
        accepts(nurse);
        assertThat(opens(nurse)).isTrue();
        assertThat(network.as(surgeon, () -> shared.end(asked.id(), "seen here alone")))
                .isTrue();
        assertThat(opens(nurse)).isFalse();
        assertThat(accepts(nurse)).isFalse();
    }

    @Test
    void endsWhenTheChildPassesToAThirdHospital() {
        accepts(nurse);
        var third = network.site();
        var moved = network.as(surgeon, () -> transfers.ask(child, new SiteId(third), "the family moved"));
        network.as(network.staff(third, "NURSE"), () -> transfers.accept(moved.id()));
        assertThat(opens(nurse)).isFalse();
    }

    @Test
    void changesNothingInTheRecord() {
        accepts(nurse);
        assertThat(network.as(nurse, () -> jdbc.sql("update child set initials = 'X' where id = ?")
                        .param(child.value())
                        .update()))
                .isZero();
        assertThat(network.as(nurse, () -> jdbc.sql("update child_identity set family_name = 'X' where child_id = ?")
                        .param(child.value())
                        .update()))
                .isZero();
    }
}
