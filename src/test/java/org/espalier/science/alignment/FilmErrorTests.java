package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Offset.offset;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values derived by hand from the formulas named beside each method unless a publication is named. */
class FilmErrorTests {

    @ParameterizedTest
    @CsvSource({"1200, 80, 1.07143", "1000, 150, 1.17647", "3000, 100, 1.03448", "1150, 50, 1.04545"})
    void magnifiesByTheDistances(double sourceToDetector, double objectToDetector, double factor) {
        assertThat(Magnification.ofDistances(new Length(sourceToDetector), new Length(objectToDetector))
                        .factor())
                .isCloseTo(factor, within(0.000006));
    }

    /** Percent at these tube distances in cm (geometry, printed to 0.1 %). */
    @ParameterizedTest
    @CsvSource({"305, 5, 1.7", "305, 20, 7.0", "183, 10, 5.8", "183, 20, 12.3", "102, 5, 5.2", "102, 20, 24.4"})
    void magnifiesByTheDistancesInUse(double sourceToDetector, double objectToDetector, double percent) {
        double factor = Magnification.ofDistances(
                        Length.ofCentimetres(sourceToDetector), Length.ofCentimetres(objectToDetector))
                .factor();
        assertThat(100 * (factor - 1)).isCloseTo(percent, within(0.051));
    }

    /**
     * A coin of 24.5 mm shown 27.17 to 29.40 mm wide: J Bone Joint Surg Br 2006;88(Supp II):247. A bead of 8 mm
     * (nominal) shown 9.69 to 11.90 mm wide: Bioengineering 2025;12:999.
     */
    @ParameterizedTest
    @CsvSource({"24.5, 27.17, 1.109", "24.5, 29.40, 1.200", "8, 9.69, 1.21", "8, 11.90, 1.49"})
    void magnifiesAsMarkersShow(double real, double shown, double factor) {
        Magnification magnification = Magnification.ofMarker(new Length(real), new Length(shown));
        assertThat(magnification.factor()).isCloseTo(factor, within(0.0051));
        assertThat(magnification.trueLength(new Length(shown)).millimetres()).isCloseTo(real, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1010, 0.01", "1020, 0.02", "1050, 0.05"})
    void readsTooLongWithAMarkerNearerTheDetector(double sourceToMarker, double excess) {
        assertThat(Magnification.excessOfMarkerOffBone(new Length(sourceToMarker), new Length(1000)))
                .isCloseTo(excess, within(1e-12));
    }

    @Test
    void refusesAnObjectBehindTubeOrDetector() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Magnification.ofDistances(new Length(1000), new Length(1000)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Magnification.ofDistances(new Length(1000), new Length(-1)));
        assertThatIllegalArgumentException().isThrownBy(() -> Magnification.ofMarker(new Length(0), new Length(1)));
    }

    @Test
    void letsTheShortJointLineDominateAnAngle() {
        Angle axis = PointingError.ofLine(new Length(1.5), new Length(350));
        Angle joint = PointingError.ofLine(new Length(1.0), new Length(70));
        assertThat(axis.degrees()).isCloseTo(0.3473, within(0.0001));
        assertThat(joint.degrees()).isCloseTo(1.1575, within(0.0001));
        assertThat(PointingError.ofAngle(axis, joint).degrees()).isCloseTo(1.2085, within(0.0001));
    }

    @Test
    void carriesTheErrorOfPointsIntoTheAxisDeviation() {
        Length femur = new Length(350);
        Length tibia = new Length(280);
        Length none = new Length(0);
        assertThat(PointingError.ofAxisDeviation(femur, tibia, new Length(2), new Length(1.5), new Length(1))
                        .millimetres())
                .isCloseTo(1.5763, within(0.0001));
        assertThat(PointingError.ofEnd(new Length(3), femur).degrees()).isCloseTo(0.4911, within(0.0001));
        assertThat(PointingError.ofAxisDeviation(femur, tibia, new Length(3), none, none)
                        .millimetres())
                .isCloseTo(1.3333, within(0.0001));
    }

    @ParameterizedTest
    @CsvSource({"400, 360, 30, 15, 25.4, 7.9", "400, 360, 10, 15, 8.5, 2.6", "250, 200, 10, 15, 5.0, 2.6"})
    void showsDeviationThatIsNotThereWhenFlexedAndTurned(
            double femur, double tibia, double flexion, double turn, double deviation, double angle) {
        var limb = new FlexedLimb(new Length(femur), new Length(tibia), new Angle(flexion), new Angle(turn));
        assertThat(limb.apparentAxisDeviation().millimetres()).isCloseTo(deviation, within(0.051));
        assertThat(limb.apparentKneeAngle().degrees()).isCloseTo(angle, within(0.051));
    }

    @Test
    void showsDeviationToTwoDecimals() {
        var limb = new FlexedLimb(new Length(400), new Length(360), new Angle(30), new Angle(15));
        assertThat(limb.apparentKneeAngle().degrees()).isCloseTo(7.94, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({"10, 757.1", "20, 748.5", "30, 734.2"})
    void shortensAFlexedLimb(double flexion, double length) {
        var limb = new FlexedLimb(new Length(400), new Length(360), new Angle(flexion), Angle.ZERO);
        assertThat(limb.projectedLength().millimetres()).isCloseTo(length, within(0.051));
        assertThat(limb.apparentAxisDeviation().millimetres()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"96, 78, 66.7, 52.9", "95, 85, 50.0, 22.2"})
    void sharesAVarusBetweenTheBonesByTheZeroThatIsNamed(double mldfa, double mmpta, double square, double means) {
        assertThat(TibialShare.percent(new Angle(mldfa), new Angle(mmpta), TibialShare.Zero.RIGHT_ANGLES))
                .hasValueCloseTo(square, offset(0.051));
        assertThat(TibialShare.percent(new Angle(mldfa), new Angle(mmpta), TibialShare.Zero.ADULT_MEANS))
                .hasValueCloseTo(means, offset(0.051));
    }

    @Test
    void sharesNothingWhenNotBothBonesAreInVarus() {
        assertThat(TibialShare.percent(new Angle(86), new Angle(80), TibialShare.Zero.RIGHT_ANGLES))
                .isEmpty();
        assertThat(TibialShare.percent(new Angle(90), new Angle(90), TibialShare.Zero.RIGHT_ANGLES))
                .isEmpty();
    }

    /** 18 degrees: 2.11 by the regression of doi 10.1016/S0968-0160(02)00049-2, where the group measured 2.5. */
    @Test
    void knowsHowFarStandingMenReadMoreValgusWithFlexedKnees() {
        assertThat(FlexedLimb.observedValgusShift(new Angle(18)).orElseThrow().degrees())
                .isCloseTo(2.11, within(0.0051));
        assertThat(FlexedLimb.observedValgusShift(new Angle(14.9))).isEmpty();
        assertThat(FlexedLimb.observedValgusShift(new Angle(25.1))).isEmpty();
    }
}
