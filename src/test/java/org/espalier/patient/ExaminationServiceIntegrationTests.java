package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Weight;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@IntegrationTest
class ExaminationServiceIntegrationTests {

    private static final LocalDate BORN = LocalDate.of(2014, 2, 10);
    private static final LocalDate DAY = LocalDate.of(2024, 5, 6);

    @Autowired
    ExaminationService examinations;

    @Autowired
    PatientService patients;

    @Autowired
    TestNetwork network;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Ids ids;

    SiteId site;
    UUID surgeon;
    ChildId child;

    @BeforeEach
    void aChild() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
        child = new ChildId(ids.next());
        var data = new ChildData("Measured", "Mia", BORN, Sex.FEMALE, null);
        network.as(surgeon, () -> patients.register(site, child, data));
    }

    @Test
    void keepsEveryKindOfFinding() {
        var size = new BodySize(DAY, Length.ofCentimetres(138.5), Weight.ofKilograms(41.2));
        var boneAge = new BoneAge(DAY, Age.ofMonths(126), BoneAgeMethod.HAND_ATLAS);
        var diagnosis = new Diagnosis(
                DAY,
                DiagnosisKind.TIBIA_VARA,
                AffectedSides.LEFT,
                Onset.JUVENILE,
                Age.ofYears(8),
                "first seen at school");
        record(size);
        record(boneAge);
        record(diagnosis);
        var found = examination();
        assertThat(found.sizes().latest()).contains(size);
        assertThat(found.boneAges().latest()).contains(boneAge);
        assertThat(found.diagnoses().latest()).contains(diagnosis);
        assertThat(found.sizes().facts().getFirst().by()).startsWith("Test person");
    }

    @Test
    void keepsHeightOrWeightAlone() {
        record(new BodySize(DAY, Length.ofCentimetres(138), null));
        record(new BodySize(DAY.plusDays(1), null, Weight.ofKilograms(40)));
        assertThat(examination().sizes().standing())
                .extracting(Fact::finding)
                .containsExactly(
                        new BodySize(DAY, Length.ofCentimetres(138), null),
                        new BodySize(DAY.plusDays(1), null, Weight.ofKilograms(40)));
    }

    @Test
    void keepsOnceWhatIsSentTwice() {
        var id = new FactId(ids.next());
        var size = new BodySize(DAY, Length.ofCentimetres(138), null);
        for (int time = 0; time < 2; time++) {
            record(id, size);
        }
        assertThat(examination().sizes().facts()).hasSize(1);
    }

    @Test
    void showsBothTheCorrectedAndTheCorrection() {
        var wrong = record(new BodySize(DAY, Length.ofCentimetres(183), null));
        var right = new BodySize(DAY, Length.ofCentimetres(138), null);
        assertThat(correct(wrong, right)).isTrue();
        var sizes = examination().sizes();
        assertThat(sizes.facts()).hasSize(2);
        assertThat(sizes.standing()).extracting(Fact::finding).containsExactly(right);
        assertThat(sizes.facts().getLast().reason()).isEqualTo("digits swapped");
    }

    @Test
    void letsOnlyOneOfTwoCorrectTheSameFact() {
        var wrong = record(new BodySize(DAY, Length.ofCentimetres(183), null));
        assertThat(correct(wrong, new BodySize(DAY, Length.ofCentimetres(138), null)))
                .isTrue();
        assertThat(correct(wrong, new BodySize(DAY, Length.ofCentimetres(139), null)))
                .isFalse();
        assertThat(examination().sizes().facts()).hasSize(2);
    }

    @Test
    void withdrawsWhatBelongsToAnotherChild() {
        record(new BoneAge(DAY, Age.ofYears(10), BoneAgeMethod.ELBOW));
        var fact = examination().boneAges().standing().getFirst();
        var kept = network.as(
                surgeon, () -> examinations.withdraw(child, fact, new FactId(ids.next()), "another child’s film"));
        assertThat(kept).isTrue();
        var boneAges = examination().boneAges();
        assertThat(boneAges.standing()).isEmpty();
        assertThat(boneAges.facts()).hasSize(2);
    }

    @Test
    void refusesADayBeforeBirthOrAfterToday() {
        assertThatThrownBy(() -> record(new BodySize(BORN.minusDays(1), Length.ofCentimetres(50), null)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> record(new BodySize(LocalDate.of(2999, 1, 1), Length.ofCentimetres(50), null)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"update body_size set height_cm = 1", "delete from body_size", "truncate body_size"})
    void givesTheApplicationNoWayToChangeAFact(String statement) {
        record(new BodySize(DAY, Length.ofCentimetres(138), null));
        assertThatThrownBy(() -> network.as(surgeon, () -> jdbc.sql(statement).update()))
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("42501"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "update body_size set height_cm = height_cm + 1",
                "update bone_age set method = 'x'",
                "update diagnosis set note = 'x'",
                "delete from body_size",
                "delete from bone_age",
                "delete from diagnosis"
            })
    void stopsTheOwnerFromChangingAFact(String statement) {
        record(new BodySize(DAY, Length.ofCentimetres(138), null));
        record(new BoneAge(DAY, Age.ofYears(9), BoneAgeMethod.ELBOW));
        record(new Diagnosis(DAY, DiagnosisKind.RENAL, AffectedSides.BOTH, null, null, null));
        assertThatThrownBy(() -> network.owner().sql(statement).update())
                .rootCause()
                .isInstanceOfSatisfying(
                        SQLException.class, e -> assertThat(e.getSQLState()).isEqualTo("ES002"));
    }

    @Test
    void movesFactsWithTheChildAndStillLetsTheOldSiteReadThem() {
        record(new BodySize(DAY, Length.ofCentimetres(138), null));
        var newSite = network.site();
        network.owner()
                .sql("update child set site_id = ? where id = ?")
                .params(newSite, child.value())
                .update();
        var newSurgeon = network.staff(newSite, "SURGEON");
        assertThat(network.as(newSurgeon, () -> examinations.of(child)).sizes().facts())
                .hasSize(1);
        assertThat(examination().sizes().facts()).hasSize(1);
        assertThatThrownBy(() -> record(new BodySize(DAY, Length.ofCentimetres(138), null)))
                .isInstanceOf(RuntimeException.class);
    }

    private FactId record(Finding finding) {
        var id = new FactId(ids.next());
        record(id, finding);
        return id;
    }

    private void record(FactId id, Finding finding) {
        network.as(surgeon, () -> {
            examinations.record(child, id, finding);
            return id;
        });
    }

    private boolean correct(FactId earlier, Finding finding) {
        return network.as(
                surgeon, () -> examinations.correct(child, earlier, new FactId(ids.next()), finding, "digits swapped"));
    }

    private Examination examination() {
        return network.as(surgeon, () -> examinations.of(child));
    }
}
