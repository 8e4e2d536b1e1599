package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Offset.offset;

import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class AlignmentMeasurementTests {

    /** Coordinates of the constructed limbs are printed to 0.01 mm, which moves an angle by up to 0.02 degrees. */
    private static final double TOLERANCE = 0.02;

    private static final Calibration MILLIMETRES = Calibration.ofStated(PixelScale.ofSquare(1));

    /** Constructed limbs (invented, not children): the numbers were chosen first and the points follow from them. */
    enum Limb {
        STRAIGHT("""
                hip_centre 0 0
                condyle_medial -28.68 401.72
                condyle_lateral 41.23 398.18
                plateau_medial -28.45 406.10
                plateau_lateral 41.51 403.78
                plafond_medial -15 744.86
                plafond_lateral 15 744.91
                """, numbers(88.00, 87.00, 1.00, 2.00, 89.0, -6.40, 40.67)),
        TIBIA_VARA("""
                hip_centre 0 0
                condyle_medial 13.91 230.94
                condyle_lateral 63.21 222.55
                plateau_medial 14.69 235.12
                plateau_lateral 64.44 230.20
                plafond_medial -14.65 410.17
                plafond_lateral 14.65 416.59
                """, numbers(89.99, 72.00, 4.01, 22.00, 90.0, -39.06, -29.53)),
        FEMORAL_VALGUS("""
                hip_centre 0 0
                condyle_medial -54.93 362.78
                condyle_lateral 8.68 355.74
                plateau_medial -54.38 367.75
                plateau_lateral 9.23 360.71
                plafond_medial -14.94 664.76
                plafond_lateral 14.94 661.99
                """, numbers(80.00, 88.00, 0.00, -8.00, 89.0, 22.85, 85.49)),
        VALGUS_OF_BOTH_BONES("""
                hip_centre 0 0
                condyle_medial -57.60 299.91
                condyle_lateral 0.35 297.35
                plateau_medial -57.35 305.41
                plateau_lateral 0.54 301.84
                plafond_medial -14.83 554.23
                plafond_lateral 14.83 549.78
                """, numbers(82.00, 93.00, -1.00, -12.00, 88.0, 28.51, 99.07));

        private final LimbLandmarks landmarks;
        private final Map<Quantity, Double> numbers;

        Limb(String rows, Map<Quantity, Double> numbers) {
            this.landmarks = Limbs.of(rows);
            this.numbers = numbers;
        }
    }

    enum Laying {
        AS_MADE(UnaryOperator.identity()),
        MIRRORED(Limbs.mirrored()),
        TILTED(Limbs.tilted(7)),
        ON_ITS_SIDE(Limbs.tilted(-90)),
        UPSIDE_DOWN(Limbs.tilted(180)),
        MIRRORED_AND_TILTED(point -> Limbs.tilted(33).apply(Limbs.mirrored().apply(point)));

        private final UnaryOperator<PixelPoint> move;

        Laying(UnaryOperator<PixelPoint> move) {
            this.move = move;
        }
    }

    private static Map<Quantity, Double> numbers(
            double mldfa, double mmpta, double jlca, double hka, double ldta, double mad, double wbl) {
        return Map.of(
                Quantity.MLDFA, mldfa,
                Quantity.MMPTA, mmpta,
                Quantity.JLCA, jlca,
                Quantity.HKA, hka,
                Quantity.BONY_HKA, mldfa - mmpta,
                Quantity.LDTA, ldta,
                Quantity.MAD, mad,
                Quantity.WBL, wbl);
    }

    static Stream<Arguments> limbsAndLayings() {
        return Stream.of(Limb.values())
                .flatMap(limb -> Stream.of(Laying.values()).map(laying -> Arguments.of(limb, laying)));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("limbsAndLayings")
    void givesTheNumbersOfAConstructedLimbOnEitherSide(Limb limb, Laying laying) {
        LimbLandmarks landmarks = Limbs.moved(limb.landmarks, laying.move);
        for (Side side : Side.values()) {
            LimbNumbers numbers = AlignmentMeasurement.measure(side, landmarks, MILLIMETRES);
            assertNumbers(numbers, limb.numbers);
            assertThat(numbers.side()).isEqualTo(side);
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("limbsAndLayings")
    void bringsPixelsThatAreNotSquareToMillimetresFirst(Limb limb, Laying laying) {
        LimbLandmarks landmarks = Limbs.moved(Limbs.moved(limb.landmarks, laying.move), Limbs.stretched(10, 5));
        Calibration calibration = Calibration.ofTagGeometry(PixelScale.of(0.1, 0.2));
        assertNumbers(AlignmentMeasurement.measure(Side.LEFT, landmarks, calibration), limb.numbers);
    }

    private static void assertNumbers(LimbNumbers numbers, Map<Quantity, Double> expected) {
        expected.forEach((quantity, value) ->
                assertThat(numbers.value(quantity)).as(quantity.code()).hasValueCloseTo(value, offset(TOLERANCE)));
    }

    @Test
    void measuresTheMetaphysealAngleOfTheTibia() {
        LimbLandmarks level = Limbs.of("""
                beak_medial -18 10
                beak_lateral 18 10
                tibia_shaft_proximal 0 60
                tibia_shaft_distal -22.94 140
                """);
        LimbLandmarks sloping = Limbs.of("""
                beak_medial -20 16
                beak_lateral 20 10
                tibia_shaft_proximal 0 60
                tibia_shaft_distal -8 150
                """);
        assertThat(value(level, Quantity.MDA)).isCloseTo(16.00, within(TOLERANCE));
        assertThat(value(sloping, Quantity.MDA)).isCloseTo(13.61, within(TOLERANCE));
        assertThat(value(Limbs.moved(sloping, Limbs.mirrored()), Quantity.MDA)).isCloseTo(13.61, within(TOLERANCE));
    }

    /** By construction: the beak line drops 6 in 40 laterally, the shaft stands upright; atan(6/40) = 8.53. */
    @Test
    void measuresTheMetaphysealAngleOfTheFemurWithVarusWhereTheLateralEndLiesDistal() {
        LimbLandmarks varus = Limbs.of("""
                femur_shaft_proximal 0 20
                femur_shaft_distal 0 150
                femur_beak_medial -20 200
                femur_beak_lateral 20 206
                """);
        assertThat(value(varus, Quantity.FMDA)).isCloseTo(8.53, within(0.005));
    }

    /** By construction: femoral shaft 6 degrees off the upright, distally medial; tibial shaft upright. */
    @Test
    void measuresTheAngleOfTheShaftsWithValgusPositive() {
        double medial = 100 * Math.tan(Math.toRadians(6));
        LimbLandmarks valgus = Limbs.of("""
                femur_shaft_proximal 0 0
                femur_shaft_distal %s 100
                condyle_medial -40 150
                condyle_lateral 20 150
                tibia_shaft_proximal -10 200
                tibia_shaft_distal -10 300
                """.formatted(-medial));
        assertThat(value(valgus, Quantity.ATFA)).isCloseTo(6, within(1e-9));
        assertThat(value(valgus, Quantity.ALDFA)).isCloseTo(84, within(1e-9));
    }

    @Test
    void measuresHipAngleOffsetPhysesAndLengths() {
        LimbLandmarks limb = Limbs.of("""
                hip_centre 0 0
                trochanter_tip 50 -5
                femur_physis_medial -30 285
                femur_physis_lateral 30 282
                condyle_medial -30 300
                condyle_lateral 30 300
                plateau_medial -26 304
                plateau_lateral 34 304
                tibia_physis_medial -26 318
                tibia_physis_lateral 32 321
                plafond_medial -11 554
                plafond_lateral 19 554
                """);
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.RIGHT, limb, MILLIMETRES);
        assertThat(numbers.value(Quantity.LPFA)).hasValueCloseTo(90 + Math.toDegrees(Math.atan2(5, 50)), offset(1e-9));
        assertThat(numbers.value(Quantity.KNEE_OFFSET)).hasValue(4);
        assertThat(numbers.value(Quantity.FEMUR_LENGTH)).hasValue(300);
        assertThat(numbers.value(Quantity.TIBIA_LENGTH)).hasValue(250);
        assertThat(numbers.length(Quantity.LIMB_LENGTH).orElseThrow().millimetres())
                .isCloseTo(Math.hypot(4, 554), within(1e-9));
        assertThat(numbers.length(Quantity.FEMUR_PHYSIS_WIDTH).orElseThrow().millimetres())
                .isCloseTo(Math.hypot(60, 3), within(1e-9));
        assertThat(numbers.length(Quantity.TIBIA_PHYSIS_WIDTH).orElseThrow().millimetres())
                .isCloseTo(Math.hypot(58, 3), within(1e-9));
        assertThat(numbers.angle(Quantity.FEMUR_PHYSIS_ANGLE).orElseThrow().degrees())
                .isCloseTo(90 - Math.toDegrees(Math.atan2(3, 60)), within(1e-9));
        assertThat(numbers.angle(Quantity.TIBIA_PHYSIS_ANGLE).orElseThrow().degrees())
                .isCloseTo(90 + Math.toDegrees(Math.atan2(3, 58)), within(1e-9));
    }

    @Test
    void tellsNoLengthWithoutCalibrationButEveryAngle() {
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.RIGHT, Limb.TIBIA_VARA.landmarks, Calibration.none());
        assertThat(numbers.outcome(Quantity.MAD))
                .isEqualTo(new Measured.Absent(Measured.Reason.UNCALIBRATED, Set.of()));
        assertThat(numbers.length(Quantity.FEMUR_LENGTH)).isEmpty();
        assertThat(numbers.value(Quantity.HKA)).hasValueCloseTo(22.0, offset(TOLERANCE));
        assertThat(numbers.value(Quantity.WBL)).hasValueCloseTo(-29.53, offset(TOLERANCE));
    }

    @Test
    void namesTheLandmarksThatAreMissing() {
        LimbLandmarks limb = Limb.STRAIGHT.landmarks.without(Landmark.HIP_CENTRE);
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.RIGHT, limb, MILLIMETRES);
        assertThat(numbers.outcome(Quantity.MLDFA))
                .isEqualTo(new Measured.Absent(Measured.Reason.LANDMARKS_MISSING, Set.of(Landmark.HIP_CENTRE)));
        assertThat(numbers.value(Quantity.MMPTA)).hasValueCloseTo(87.0, offset(TOLERANCE));
    }

    @Test
    void measuresTheJointAngleFromTheKneeAlone() {
        LimbLandmarks knee = Limb.TIBIA_VARA
                .landmarks
                .without(Landmark.HIP_CENTRE)
                .without(Landmark.PLAFOND_MEDIAL)
                .without(Landmark.PLAFOND_LATERAL);
        assertThat(value(knee, Quantity.JLCA)).isCloseTo(4.01, within(TOLERANCE));
    }

    @Test
    void refusesALineWithoutLength() {
        PixelPoint lateral =
                Limb.STRAIGHT.landmarks.point(Landmark.CONDYLE_LATERAL).orElseThrow();
        LimbLandmarks limb = Limb.STRAIGHT.landmarks.with(Landmark.CONDYLE_MEDIAL, lateral);
        assertThat(reason(limb, Quantity.MLDFA)).isEqualTo(Measured.Reason.POINTS_COINCIDE);
        assertThat(reason(limb, Quantity.BONY_HKA)).isEqualTo(Measured.Reason.POINTS_COINCIDE);
    }

    @Test
    void refusesACrossingOfParallelLines() {
        LimbLandmarks limb = Limbs.of("""
                hip_centre 0 0
                plateau_medial 10 100
                plateau_lateral 10 160
                plafond_medial -5 300
                plafond_lateral 5 300
                """);
        assertThat(reason(limb, Quantity.WBL)).isEqualTo(Measured.Reason.LINES_PARALLEL);
    }

    @Test
    void noticesALineWhoseEndsAreExchanged() {
        LimbLandmarks straight = Limb.STRAIGHT.landmarks;
        LimbLandmarks exchanged = straight.with(
                        Landmark.PLAFOND_MEDIAL,
                        straight.point(Landmark.PLAFOND_LATERAL).orElseThrow())
                .with(
                        Landmark.PLAFOND_LATERAL,
                        straight.point(Landmark.PLAFOND_MEDIAL).orElseThrow());
        assertThat(reason(exchanged, Quantity.LDTA)).isEqualTo(Measured.Reason.ENDS_EXCHANGED);
        assertThat(value(exchanged, Quantity.MMPTA)).isCloseTo(87, within(TOLERANCE));
    }

    @Test
    void saysSoWhenLateralCannotBeTold() {
        LimbLandmarks limb = Limbs.of("""
                condyle_medial 0 0
                condyle_lateral 60 0
                plateau_medial 0 0
                plateau_lateral 60 0
                """);
        assertThat(reason(limb, Quantity.JLCA)).isEqualTo(Measured.Reason.LATERAL_UNCLEAR);
    }

    /**
     * Means of Jamali and others, J Orthop Surg Res 2017;12:77 (mLDFA 85.6, mMPTA 86.1, 0.7 varus, offset of the
     * femoral axes 5.4; aLDFA printed as 80.2, aTFA as 4.8 where arithmetic gives 4.7); Bone Jt Open 2021;2(5) (bony
     * 0.87, knee 1.33 varus); Feucht and others, Knee Surg Sports Traumatol Arthrosc 2021;29:3299, Fig. 3 (10 varus;
     * the tibia corrected to 90 leaves 4.4, to 95 about none).
     */
    @ParameterizedTest
    @CsvSource({
        "85.6, 86.1, 1.2, 0.7, -0.5",
        "90.0, 89.13, 0.46, 1.33, 0.87",
        "94.4, 84.4, 0, 10, 10",
        "94.4, 90, 0, 4.4, 4.4",
        "94.4, 95, 0, -0.6, -0.6"
    })
    void addsUpAsPublishedMeansDo(double mldfa, double mmpta, double jlca, double hka, double bony) {
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.RIGHT, built(mldfa, mmpta, jlca), MILLIMETRES);
        assertThat(numbers.value(Quantity.JLCA)).hasValueCloseTo(jlca, offset(1e-9));
        assertThat(numbers.value(Quantity.HKA)).hasValueCloseTo(hka, offset(1e-9));
        assertThat(numbers.value(Quantity.BONY_HKA)).hasValueCloseTo(bony, offset(1e-9));
    }

    @Test
    void separatesShaftAndMechanicalAxisAsPublishedMeansDo() {
        LimbLandmarks whole = built(85.6, 86.1, 1.2)
                .with(Landmark.FEMUR_SHAFT_PROXIMAL, new PixelPoint(0, 0))
                .with(Landmark.FEMUR_SHAFT_DISTAL, Limbs.tilted(5.4).apply(new PixelPoint(0, 100)))
                .with(Landmark.TIBIA_SHAFT_PROXIMAL, new PixelPoint(0, 0))
                .with(Landmark.TIBIA_SHAFT_DISTAL, Limbs.tilted(0.7).apply(new PixelPoint(0, 100)));
        assertThat(value(whole, Quantity.ALDFA)).isCloseTo(80.2, within(1e-9));
        assertThat(value(whole, Quantity.ATFA)).isCloseTo(4.7, within(1e-9));
    }

    /** By the formula F T sin d / √(F² + T² + 2 F T cos d); varus passes medially. */
    @ParameterizedTest
    @CsvSource({"400, 340, 32.03", "250, 200, 19.37"})
    void deviatesByLengthsAndAngle(double femur, double tibia, double deviation) {
        LimbLandmarks limb = built(90, 80, 0, femur, tibia);
        assertThat(AlignmentMeasurement.measure(Side.LEFT, limb, MILLIMETRES).value(Quantity.MAD))
                .hasValueCloseTo(-deviation, offset(0.006));
    }

    private static LimbLandmarks built(double mldfa, double mmpta, double jlca) {
        return built(mldfa, mmpta, jlca, 400, 340);
    }

    /** A limb with one knee centre, hip above it at the origin, x lateral and y distal. */
    private static LimbLandmarks built(double mldfa, double mmpta, double jlca, double femur, double tibia) {
        double condyles = mldfa - 90;
        double plateau = condyles + jlca;
        double axis = plateau - mmpta + 90;
        PixelPoint ankle = Limbs.tilted(axis).apply(new PixelPoint(0, tibia));
        LimbLandmarks limb = LimbLandmarks.none().with(Landmark.HIP_CENTRE, new PixelPoint(0, 0));
        limb = withLine(limb, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL, 0, femur, condyles);
        limb = withLine(limb, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL, 0, femur, plateau);
        return withLine(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL, ankle.x(), femur + ankle.y(), axis);
    }

    private static LimbLandmarks withLine(
            LimbLandmarks limb, Landmark medial, Landmark lateral, double x, double y, double slope) {
        PixelPoint half = Limbs.tilted(slope).apply(new PixelPoint(30, 0));
        return limb.with(medial, new PixelPoint(x - half.x(), y - half.y()))
                .with(lateral, new PixelPoint(x + half.x(), y + half.y()));
    }

    private static double value(LimbLandmarks limb, Quantity quantity) {
        return AlignmentMeasurement.measure(Side.RIGHT, limb, Calibration.none())
                .value(quantity)
                .orElseThrow();
    }

    private static Measured.Reason reason(LimbLandmarks limb, Quantity quantity) {
        LimbNumbers numbers = AlignmentMeasurement.measure(Side.RIGHT, limb, Calibration.none());
        return switch (numbers.outcome(quantity)) {
            case Measured.Absent absent -> absent.reason();
            case Measured.Value value -> throw new AssertionError(quantity + " was measured: " + value);
        };
    }
}
