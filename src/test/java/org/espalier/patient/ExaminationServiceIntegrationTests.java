package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
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
    void keepsEveryPartOfAVisitAndOfTheWorkUp() {
        var angles = new EnumMap<LegAngle, Angle>(LegAngle.class);
        var signs = new EnumMap<LegSign, LegAnswer>(LegSign.class);
        for (var angle : LegAngle.values()) {
            angles.put(angle, Angle.ofDegrees(angle.least()));
        }
        for (var sign : LegSign.values()) {
            signs.put(sign, sign.answers().getLast());
        }
        var visit = new ClinicalExamination(
                DAY,
                Length.ofMillimetres(0),
                Length.ofMillimetres(85),
                new LegExamination(angles, signs),
                new LegExamination(Map.of(LegAngle.THIGH_FOOT, Angle.ofDegrees(20)), Map.of()),
                6,
                SleepSymptoms.SNORING,
                "limps after school");
        var lab = new LabResult(DAY, LabAnalyte.PHOSPHATE, new BigDecimal("1.15"), LabUnit.MMOL_PER_L, "1.2–1.8");
        var disease = new BoneDisease(DAY, BoneDisease.Control.CONTROLLED, "on treatment");
        var stage = new TibiaVaraStage(DAY, Side.LEFT, TibiaVaraStage.Stage.IV);
        var report = new ImagingReport(
                DAY,
                ImagingReport.Modality.MAGNETIC_RESONANCE,
                AffectedSides.LEFT,
                ImagingReport.Bar.BONY,
                18,
                Angle.ofDegrees(32),
                Angle.ofDegrees(-12),
                "A radiologist",
                "Bar at the back of the medial tibial physis");
        var boneAge = new BoneAge(DAY, Age.ofMonths(126), BoneAgeMethod.ELBOW, "A radiologist");
        List.of(visit, lab, disease, stage, report, boneAge).forEach(this::record);
        var found = examination();
        assertThat(found.visits().findings()).containsExactly(visit);
        assertThat(found.labs().findings()).containsExactly(lab);
        assertThat(found.boneDisease().findings()).containsExactly(disease);
        assertThat(found.stages().findings()).containsExactly(stage);
        assertThat(found.imaging().findings()).containsExactly(report);
        assertThat(found.boneAges().findings()).containsExactly(boneAge);
    }

    @Test
    void keepsEveryAnswerOfEverySignOnEitherSide() {
        for (var sign : LegSign.values()) {
            for (var answer : sign.answers()) {
                var leg = new LegExamination(Map.of(), Map.of(sign, answer));
                record(new ClinicalExamination(DAY, null, null, leg, leg, null, null, null));
            }
        }
        var answers = Arrays.stream(LegSign.values())
                .flatMap(sign ->
                        Arrays.stream(Side.values()).flatMap(side -> examination().answers(side, sign).stream()))
                .toList();
        assertThat(answers)
                .hasSize(2
                        * Arrays.stream(LegSign.values())
                                .mapToInt(sign -> sign.answers().size())
                                .sum());
    }

    @Test
    void keepsAllOfAVisitOrNothing() {
        var size = new BodySize(DAY, Length.ofCentimetres(138), null);
        var toCome = new BodySize(LocalDate.of(2999, 1, 1), Length.ofCentimetres(138), null);
        var both = new java.util.LinkedHashMap<FactId, Finding>();
        both.put(new FactId(ids.next()), size);
        both.put(new FactId(ids.next()), toCome);
        assertThatThrownBy(() -> network.as(surgeon, () -> {
                    examinations.recordTogether(child, both);
                    return child;
                }))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(examination().sizes().facts()).isEmpty();
    }

    @Test
    void hasStagesForEarlyOnsetAlone() {
        assertThat(examination().hasStages()).isFalse();
        record(new Diagnosis(DAY, DiagnosisKind.TIBIA_VARA, AffectedSides.LEFT, Onset.LATE, null, null));
        assertThat(examination().hasStages()).isFalse();
        record(new Diagnosis(DAY, DiagnosisKind.TIBIA_VARA, AffectedSides.LEFT, Onset.INFANTILE, null, null));
        assertThat(examination().hasStages()).isTrue();
    }

    @Test
    void letsOneVisitStandInPlaceOfAnother() {
        var leg = new LegExamination(Map.of(LegAngle.KNEE_FLEXION, Angle.ofDegrees(40)), Map.of());
        var wrong = record(new ClinicalExamination(DAY, null, null, leg, leg, null, null, null));
        var right = new ClinicalExamination(
                DAY, null, null, leg, LegExamination.NOT_RECORDED, null, null, "left was not examined");
        assertThat(correct(wrong, right)).isTrue();
        assertThat(examination().visits().findings()).containsExactly(right);
        assertThat(examination().visits().facts()).hasSize(2);
        var fact = examination().visits().standing().getFirst();
        assertThat(network.as(surgeon, () -> examinations.withdraw(child, fact, new FactId(ids.next()), "not theirs")))
                .isTrue();
        assertThat(examination().visits().standing()).isEmpty();
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
                "update clinical_examination set note = 'x'",
                "update lab_result set value = value + 1",
                "update bone_disease set note = 'x'",
                "update imaging_report set report = 'x'",
                "update tibia_vara_stage set stage = 'I'",
                "delete from clinical_examination",
                "delete from lab_result",
                "delete from bone_disease",
                "delete from imaging_report",
                "delete from tibia_vara_stage",
                "delete from body_size",
                "delete from bone_age",
                "delete from diagnosis"
            })
    void stopsTheOwnerFromChangingAFact(String statement) {
        record(new BodySize(DAY, Length.ofCentimetres(138), null));
        record(new BoneAge(DAY, Age.ofYears(9), BoneAgeMethod.ELBOW));
        record(new Diagnosis(DAY, DiagnosisKind.RENAL, AffectedSides.BOTH, null, null, null));
        record(new ClinicalExamination(
                DAY, null, null, LegExamination.NOT_RECORDED, LegExamination.NOT_RECORDED, 4, null, null));
        record(new LabResult(DAY, LabAnalyte.PHOSPHATE, BigDecimal.ONE, LabUnit.MMOL_PER_L, null));
        record(new BoneDisease(DAY, BoneDisease.Control.NOT_CONTROLLED, null));
        record(new TibiaVaraStage(DAY, Side.LEFT, TibiaVaraStage.Stage.IV));
        record(new ImagingReport(
                DAY,
                ImagingReport.Modality.COMPUTED_TOMOGRAPHY,
                AffectedSides.LEFT,
                null,
                null,
                null,
                null,
                "A radiologist",
                null));
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
