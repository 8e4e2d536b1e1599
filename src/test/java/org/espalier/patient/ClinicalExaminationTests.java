package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ClinicalExaminationTests {

    private static final LocalDate DAY = LocalDate.of(2024, 5, 6);

    @Test
    void refusesAVisitAtWhichNothingWasRecorded() {
        assertThatThrownBy(() -> visit(DAY, null, LegExamination.NOT_RECORDED, " "))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(visit(DAY, Length.ofMillimetres(0), LegExamination.NOT_RECORDED, null)
                        .gapOfKnees())
                .contains(Length.ofMillimetres(0));
    }

    @ParameterizedTest
    @CsvSource({"-1", "401"})
    void refusesAGapNoChildHas(double millimetres) {
        assertThatThrownBy(() -> visit(DAY, Length.ofMillimetres(millimetres), LegExamination.NOT_RECORDED, null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource(LegAngle.class)
    void takesEachAngleUpToItsLimitsAndInWholeDegreesAlone(LegAngle what) {
        assertThat(leg(what, what.least()).angle(what)).contains(Angle.ofDegrees(what.least()));
        assertThat(leg(what, what.most()).angle(what)).contains(Angle.ofDegrees(what.most()));
        assertThatThrownBy(() -> leg(what, what.least() - 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> leg(what, what.most() + 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> leg(what, 0.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesAnAnswerToAnotherQuestion() {
        assertThatThrownBy(() -> new LegExamination(Map.of(), Map.of(LegSign.THRUST, LegAnswer.Pulse.FELT)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> LegSign.THRUST.answer("FELT")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void neverTakesWhatWasNotRecordedForNormal() {
        var leg = leg(LegAngle.THIGH_FOOT, -10);
        assertThat(leg.answer(LegSign.THRUST)).isEmpty();
        assertThat(leg.angle(LegAngle.KNEE_FLEXION)).isEmpty();
        assertThat(LegText.of(leg)).containsExactly("Thigh-foot angle 10° internal");
    }

    @Test
    void saysDirectionsInWords() {
        assertThat(LegText.of(LegAngle.THIGH_FOOT, Angle.ofDegrees(15))).isEqualTo("15° external");
        assertThat(LegText.of(LegAngle.FOOT_PROGRESSION, Angle.ofDegrees(-5))).isEqualTo("5° internal");
        assertThat(LegText.of(LegAngle.KNEE_EXTENSION_LACK, Angle.ofDegrees(10)))
                .isEqualTo("10° short of straight");
        assertThat(LegText.of(LegAngle.KNEE_EXTENSION_LACK, Angle.ofDegrees(-5)))
                .isEqualTo("5° beyond straight");
        assertThat(LegText.of(LegAngle.THIGH_FOOT, Angle.ZERO)).isEqualTo("0°");
        assertThat(LegText.of(LegAngle.KNEE_FLEXION, Angle.ofDegrees(140))).isEqualTo("140°");
    }

    @Test
    void drawsTorsionAndLaxityOverTimeFromTheVisitsThatRecordedThem() {
        var first = visit(DAY, null, leg(LegAngle.THIGH_FOOT, -20), null);
        var silent = visit(DAY.plusMonths(6), Length.ofMillimetres(30), LegExamination.NOT_RECORDED, null);
        var last = visit(
                DAY.plusMonths(12),
                null,
                new LegExamination(
                        Map.of(LegAngle.THIGH_FOOT, Angle.ofDegrees(-5)),
                        Map.of(LegSign.LATERAL_LAXITY, LegAnswer.Laxity.TWO)),
                null);
        var examination = examination(first, silent, last);
        assertThat(examination.angles(Side.RIGHT, LegAngle.THIGH_FOOT))
                .containsExactly(
                        new Dated<>(DAY, Angle.ofDegrees(-20)), new Dated<>(DAY.plusMonths(12), Angle.ofDegrees(-5)));
        assertThat(examination.angles(Side.LEFT, LegAngle.THIGH_FOOT)).isEmpty();
        assertThat(examination.answers(Side.RIGHT, LegSign.LATERAL_LAXITY))
                .containsExactly(new Dated<>(DAY.plusMonths(12), LegAnswer.Laxity.TWO));
        assertThat(examination.gapsOfKnees()).containsExactly(new Dated<>(DAY.plusMonths(6), Length.ofMillimetres(30)));
    }

    @Test
    void takesALaboratoryValueOnlyInAUnitItIsReportedIn() {
        assertThatThrownBy(() ->
                        new LabResult(DAY, LabAnalyte.VITAMIN_D, BigDecimal.valueOf(50), LabUnit.MMOL_PER_L, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new LabResult(DAY, LabAnalyte.PHOSPHATE, BigDecimal.ZERO, LabUnit.MMOL_PER_L, null))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new LabResult(DAY, LabAnalyte.PHOSPHATE, new BigDecimal("1.40"), LabUnit.MMOL_PER_L, " ").range())
                .isNull();
    }

    @Test
    void knowsAShareOfTheGrowthPlateOnlyWithABar() {
        assertThatThrownBy(() -> report(ImagingReport.Bar.NONE, 20)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> report(ImagingReport.Bar.BONY, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(report(ImagingReport.Bar.BONY, 20).barShare()).isEqualTo(20);
    }

    private static ImagingReport report(ImagingReport.Bar bar, int share) {
        return new ImagingReport(
                DAY,
                ImagingReport.Modality.MAGNETIC_RESONANCE,
                AffectedSides.LEFT,
                bar,
                share,
                null,
                null,
                "A radiologist",
                null);
    }

    private static LegExamination leg(LegAngle what, double degrees) {
        return new LegExamination(Map.of(what, Angle.ofDegrees(degrees)), Map.of());
    }

    private static ClinicalExamination visit(
            LocalDate on, @Nullable Length knees, LegExamination right, @Nullable String note) {
        return new ClinicalExamination(on, knees, null, right, LegExamination.NOT_RECORDED, null, null, note);
    }

    private static Examination examination(ClinicalExamination... visits) {
        var facts = java.util.Arrays.stream(visits)
                .map(visit ->
                        new Fact<>(new FactId(UUID.randomUUID()), visit.on(), visit, "Test", Instant.EPOCH, null, null))
                .toList();
        return new Examination(
                Optional.empty(),
                new History<>(List.of()),
                new History<>(List.of()),
                new History<>(List.of()),
                new History<>(facts),
                new History<>(List.of()),
                new History<>(List.of()),
                new History<>(List.of()),
                new History<>(List.of()));
    }
}
