package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Offset.offset;

import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Points laid out by hand; x lateral or anterior, y distal, in mm, before the film is mirrored or tilted. */
class FurtherMeasurementTests {

    private static final Calibration MILLIMETRES = Calibration.ofStated(PixelScale.ofSquare(1));

    private static final LimbLandmarks FRONT = Limbs.of("""
            head_top 0 -20
            hip_centre 0 0
            condyle_medial -30 400
            condyle_lateral 30 400
            plateau_medial -30 410
            plateau_lateral 30 404
            plateau_medial_inner -10 404
            plateau_lateral_inner 10 404
            plafond_medial -15 704
            plafond_lateral 15 710
            patella_centre 6 380
            fibula_head 33 425
            epiphysis_base_medial -25 420
            epiphysis_base_lateral 25 420
            beak_medial -25 445
            beak_lateral 25 445
            tibia_cortex_proximal 20 480
            tibia_cortex_distal 10 580
            femur_metaphysis_screw_head 40 360
            femur_metaphysis_screw_entry 36 359.3
            femur_metaphysis_screw_tip 10 354.71
            femur_epiphysis_screw_head 40 376
            femur_epiphysis_screw_tip 10 381.29
            femur_plate_proximal 42 356
            femur_plate_distal 42 380
            """);

    private static final LimbLandmarks SIDE = Limbs.of("""
            femur_shaft_proximal 0 0
            femur_shaft_bend 10 100
            femur_shaft_distal 0 200
            femur_physis_anterior 20 220
            femur_physis_posterior -20 225
            plateau_anterior 20 240
            plateau_posterior -20 246
            tibia_shaft_proximal 0 300
            tibia_shaft_distal -80 500
            plafond_anterior -60 560
            plafond_posterior -95 546
            """);

    static Stream<UnaryOperator<PixelPoint>> layings() {
        return Stream.of(UnaryOperator.identity(), Limbs.mirrored(), Limbs.tilted(11), Limbs.tilted(-90));
    }

    private static double value(LimbLandmarks limb, UnaryOperator<PixelPoint> laying, Quantity quantity) {
        return AlignmentMeasurement.measure(Side.RIGHT, Limbs.moved(limb, laying), MILLIMETRES)
                .value(quantity)
                .orElseThrow();
    }

    private static double degrees(double rise, double run) {
        return Math.toDegrees(Math.atan2(rise, run));
    }

    @ParameterizedTest
    @MethodSource("layings")
    void readsMetaphysisAndPlateauHoweverTheFilmLies(UnaryOperator<PixelPoint> laying) {
        assertThat(value(FRONT, laying, Quantity.MDA_CORTEX)).isCloseTo(degrees(10, 100), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.EMA)).isCloseTo(45, within(1e-9));
        assertThat(value(FRONT, laying, Quantity.MEDIAL_PLATEAU_SLOPE)).isCloseTo(degrees(6, 20), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.LATERAL_PLATEAU_SLOPE)).isCloseTo(0, within(1e-9));
        assertThat(value(FRONT, laying, Quantity.PLATEAU_DEPRESSION)).isCloseTo(degrees(6, 20), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.PATELLA_POSITION)).isCloseTo(60, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("layings")
    void readsLengthsByTheFilmsOwnDefinition(UnaryOperator<PixelPoint> laying) {
        assertThat(value(FRONT, laying, Quantity.FEMUR_FILM_LENGTH)).isCloseTo(Math.hypot(30, 420), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.TIBIA_FILM_LENGTH)).isCloseTo(Math.hypot(30, 297), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.LIMB_FILM_LENGTH)).isCloseTo(727, within(1e-9));
    }

    /**
     * Right 424.6, 340.0, whole 768.9; left 421.5, 322.9, whole 747.6 mm: a public-domain film on a radiology site. The
     * whole is longer than both bones by the joint's gap of 4.3 and 3.2.
     */
    @ParameterizedTest
    @CsvSource({"424.6, 340.0, 768.9, 4.3", "421.5, 322.9, 747.6, 3.2"})
    void theWholeLimbIsNotTheSumOfBothBones(double femur, double tibia, double limb, double gap) {
        LimbLandmarks landmarks = Limbs.of("head_top 0 0\ncondyle_medial 0 " + femur + "\nplateau_medial 0 "
                + (limb - tibia) + "\nplafond_medial -10 " + limb + "\nplafond_lateral 10 " + limb);
        double whole = value(landmarks, UnaryOperator.identity(), Quantity.LIMB_FILM_LENGTH);
        double bones = value(landmarks, UnaryOperator.identity(), Quantity.FEMUR_FILM_LENGTH)
                + value(landmarks, UnaryOperator.identity(), Quantity.TIBIA_FILM_LENGTH);
        assertThat(whole).isCloseTo(limb, within(1e-9));
        assertThat(whole - bones).isCloseTo(gap, within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("layings")
    void readsTheAngleBetweenScrewsByEntryOrHeadAndTheExposedLength(UnaryOperator<PixelPoint> laying) {
        double byEntry = degrees(4.59, 26) + degrees(5.29, 30);
        assertThat(value(FRONT, laying, Quantity.FEMUR_SCREW_ANGLE)).isCloseTo(byEntry, within(1e-9));
        double byHead = degrees(5.29, 30) + degrees(5.29, 30);
        assertThat(value(FRONT.without(Landmark.FEMUR_METAPHYSIS_SCREW_ENTRY), laying, Quantity.FEMUR_SCREW_ANGLE))
                .isCloseTo(byHead, within(1e-9));
        assertThat(value(FRONT, laying, Quantity.FEMUR_METAPHYSIS_SCREW_EXPOSED))
                .isCloseTo(Math.hypot(4, 0.7), within(1e-9));
        assertThat(value(FRONT, laying, Quantity.FEMUR_PLATE_LENGTH)).isCloseTo(24, within(1e-9));
    }

    @Test
    void countsScrewsThatCloseTowardsTheirTipsAsNegative() {
        LimbLandmarks closing = FRONT.without(Landmark.FEMUR_METAPHYSIS_SCREW_ENTRY)
                .with(Landmark.FEMUR_METAPHYSIS_SCREW_TIP, new PixelPoint(10, 365))
                .with(Landmark.FEMUR_EPIPHYSIS_SCREW_TIP, new PixelPoint(10, 371));
        assertThat(value(closing, UnaryOperator.identity(), Quantity.FEMUR_SCREW_ANGLE))
                .isCloseTo(-2 * degrees(5, 30), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("layings")
    void readsAFilmFromTheSide(UnaryOperator<PixelPoint> laying) {
        double tibia = degrees(80, 200);
        assertThat(value(SIDE, laying, Quantity.PDFA)).isCloseTo(90 + degrees(5, 40), within(1e-9));
        assertThat(value(SIDE, laying, Quantity.KNEE_FLEXION)).isCloseTo(tibia, within(1e-9));
        assertThat(value(SIDE, laying, Quantity.PPTA)).isCloseTo(90 - degrees(6, 40) - tibia, within(1e-9));
        assertThat(value(SIDE, laying, Quantity.ADTA)).isCloseTo(90 + degrees(14, 35) - tibia, within(1e-9));
        assertThat(value(SIDE, laying, Quantity.FEMUR_PROCURVATUM)).isCloseTo(2 * degrees(10, 100), within(1e-9));
    }

    @ParameterizedTest
    @MethodSource("layings")
    void theAnatomicIsTheMechanicalAngleLessThatOfTheAxes(UnaryOperator<PixelPoint> laying) {
        LimbLandmarks femur = FRONT.with(Landmark.FEMUR_SHAFT_PROXIMAL, new PixelPoint(30, 100))
                .with(Landmark.FEMUR_SHAFT_DISTAL, new PixelPoint(8, 300));
        assertThat(value(femur, laying, Quantity.AMA)).isCloseTo(degrees(22, 200), within(1e-9));
        assertThat(value(femur, laying, Quantity.MLDFA) - value(femur, laying, Quantity.AMA))
                .isCloseTo(value(femur, laying, Quantity.ALDFA), within(1e-9));
    }

    @Test
    void readsNothingThatIsNotPlaced() {
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.LEFT, LimbLandmarks.none(), MILLIMETRES);
        assertThat(Stream.of(Quantity.values())
                        .filter(quantity -> !Quantity.frontal().contains(quantity)))
                .isNotEmpty()
                .allSatisfy(quantity -> assertThat(numbers.outcome(quantity))
                        .isEqualTo(new Measured.Absent(
                                Measured.Reason.LANDMARKS_MISSING, AlignmentMeasurement.landmarksOf(quantity))));
        LimbNumbers uncalibrated = AlignmentMeasurement.measure(Side.LEFT, FRONT, Calibration.none());
        assertThat(uncalibrated.value(Quantity.FEMUR_FILM_LENGTH)).isEmpty();
        assertThat(uncalibrated.value(Quantity.EMA)).isPresent();
    }

    /** Crossings of four constructed limbs, and the borders. */
    @ParameterizedTest
    @CsvSource({
        "40.67, -1",
        "-29.53, -3",
        "85.49, 2",
        "99.07, 2",
        "50, 1",
        "25, -1",
        "24.9, -2",
        "0, -2",
        "-0.1, -3",
        "75, 1",
        "100, 2",
        "100.1, 3"
    })
    void namesTheZoneOfTheKnee(double percent, int zone) {
        assertThat(AxisZone.of(percent)).isEqualTo(new AxisZone(zone));
        assertThat(AxisZone.SOURCE).contains("memory");
        assertThatIllegalArgumentException().isThrownBy(() -> new AxisZone(0));
    }

    @Test
    void setsTheFemursMetaphysisAgainstTheTibias() {
        assertThat(FemoralTibialRatio.of(new Angle(8), new Angle(16))).hasValueCloseTo(0.5, offset(1e-9));
        assertThat(FemoralTibialRatio.of(new Angle(8), Angle.ZERO)).isEmpty();
    }
}
