package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Centre, hinge and axis of a deformity; figures by plane geometry, last printed digit. */
class HingeTests {

    @ParameterizedTest
    @CsvSource({"0,300,0,200,5,100,23,0,0.0000,127.7778,10.2040", "2,380,0,180,-6,100,-30,0,-0.5739,122.6087,-12.9228"})
    void findsWhereTheAxesCross(
            double ux,
            double uy,
            double lx,
            double ly,
            double dux,
            double duy,
            double dlx,
            double dly,
            double x,
            double y,
            double degrees) {
        var proximal = new BoneLine(new LimbPoint(ux, uy), new LimbPoint(lx, ly));
        var distal = new BoneLine(new LimbPoint(dux, duy), new LimbPoint(dlx, dly));
        LimbPoint centre = proximal.crossing(distal).orElseThrow();
        assertThat(centre.lateral()).isCloseTo(x, within(1e-4));
        assertThat(centre.proximal()).isCloseTo(y, within(1e-4));
        assertThat(proximal.towardsLateral(distal).degrees()).isCloseTo(degrees, within(1e-4));
    }

    @Test
    void findsNoCrossingForParallelAxes() {
        var proximal = new BoneLine(new LimbPoint(0, 300), new LimbPoint(0, 200));
        assertThat(proximal.crossing(new BoneLine(new LimbPoint(5, 100), new LimbPoint(5.5, 0))))
                .isEqualTo(Optional.empty());
        assertThatIllegalArgumentException().isThrownBy(() -> new BoneLine(new LimbPoint(1, 1), new LimbPoint(1, 1)));
    }

    @Test
    void tellsHowFarTheLevelWanders() {
        assertThat(BoneLine.levelError(1.5, Angle.ofDegrees(5))).isCloseTo(17.2, within(0.05));
    }

    @ParameterizedTest
    @CsvSource({"10,50,8.6824,8.7156", "15,30,7.7646,7.8316", "20,40,13.6808,13.8919"})
    void leavesTheAxesBesideEachOther(double theta, double c, double beside, double chord) {
        HingeCorrection correction = varusBone(theta, new LimbPoint(0, c));
        assertThat(correction.axesBesideEachOther().abs().millimetres()).isCloseTo(beside, within(1e-4));
        assertThat(correction.shiftAtCut(new Length(c)).millimetres()).isCloseTo(chord, within(1e-4));
        assertThat(correction.angle().degrees()).isCloseTo(theta, within(1e-9));
    }

    /** The hinge 20 mm lateral, the lower axis deviating to lateral. */
    @Test
    void leavesLessWithTheHingeOffTheAxis() {
        HingeCorrection correction = varusBone(-12, new LimbPoint(20, 25));
        assertThat(correction.axesBesideEachOther().abs().millimetres()).isCloseTo(4.7607, within(1e-4));
    }

    @Test
    void namesTheRule() {
        Length tolerance = new Length(1);
        assertThat(varusBone(15, new LimbPoint(0, 0)).rule(new Length(0), tolerance))
                .isEqualTo(HingeCorrection.Rule.PURE_ANGULATION);
        assertThat(varusBone(15, new LimbPoint(0, 0)).rule(new Length(30), tolerance))
                .isEqualTo(HingeCorrection.Rule.ANGULATION_AND_SHIFT_AT_THE_CUT);
        assertThat(varusBone(15, new LimbPoint(0, 30)).rule(new Length(0), tolerance))
                .isEqualTo(HingeCorrection.Rule.AXES_BESIDE_EACH_OTHER);
    }

    /** The corrected lower axis runs parallel to the upper one, just as far beside it as the formula says. */
    @Property
    void correctsToParallelAxes(
            @ForAll @DoubleRange(min = -30, max = 30) double theta,
            @ForAll @DoubleRange(min = -60, max = 60) double x,
            @ForAll @DoubleRange(min = -120, max = 120) double y) {
        HingeCorrection correction = varusBone(theta, new LimbPoint(x, y));
        BoneLine after = correction.corrected();
        assertThat(after.upper().lateral()).isCloseTo(after.lower().lateral(), within(1e-9));
        assertThat(after.upper().lateral())
                .isCloseTo(correction.axesBesideEachOther().millimetres(), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "430,360,3.4200,3.420,17.094,34.155,51.150,68.044",
        "400,400,3.4907,3.491,17.448,34.862,52.210,69.459",
        "350,280,2.7150,2.715,13.570,27.114,40.604,54.014",
        "300,240,2.3271,2.327,11.632,23.240,34.803,46.297",
        "250,200,1.9393,1.939,9.693,19.367,29.003,38.581"
    })
    void deviatesByTheBend(
            double femur,
            double tibia,
            double perDegree,
            double one,
            double five,
            double ten,
            double fifteen,
            double twenty) {
        var leg = new LegAxis(new Length(femur), new Length(tibia));
        assertThat(leg.deviationPerDegree().millimetres()).isCloseTo(perDegree, within(1e-4));
        double[] expected = {one, five, ten, fifteen, twenty};
        double[] bends = {1, 5, 10, 15, 20};
        for (int i = 0; i < bends.length; i++) {
            assertThat(leg.deviation(Angle.ofDegrees(bends[i])).millimetres()).isCloseTo(expected[i], within(1e-3));
        }
    }

    @ParameterizedTest
    @CsvSource({"0,27.1138", "30,24.2060", "60,21.2973", "100,17.4189", "180,9.6668"})
    void deviatesLessForABendFurtherDown(double below, double deviation) {
        assertThat(LEG.deviationByTibia(Angle.ofDegrees(10), new Length(below)).millimetres())
                .isCloseTo(deviation, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({"30,24.7909", "60,22.4663"})
    void deviatesLessForABendFurtherUp(double above, double deviation) {
        assertThat(LEG.deviationByFemur(Angle.ofDegrees(10), new Length(above)).millimetres())
                .isCloseTo(deviation, within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "350,280,30,-15,0,-40,8.5130,0,-287.443",
        "350,280,30,-15,5,-40,10.4274,9.118,-288.293",
        "430,360,35,-20,8,-45,9.9349,14.860,-368.704"
    })
    void correctsAtAHingeToATarget(
            double femur,
            double tibia,
            double hx,
            double hy,
            double target,
            double ankle,
            double degrees,
            double movedX,
            double movedY) {
        Optional<Angle> correction = LegAxis.correction(
                new LimbPoint(0, femur), new LimbPoint(ankle, -tibia), new LimbPoint(hx, hy), new LimbPoint(target, 0));
        assertThat(correction.orElseThrow().degrees()).isCloseTo(degrees, within(1e-4));
        LimbPoint moved = new LimbPoint(ankle, -tibia).turnedAbout(new LimbPoint(hx, hy), correction.orElseThrow());
        assertThat(moved.lateral()).isCloseTo(movedX, within(1e-3));
        assertThat(moved.proximal()).isCloseTo(movedY, within(1e-3));
    }

    @Test
    void findsNoCorrectionOutOfReach() {
        assertThat(LegAxis.correction(
                        new LimbPoint(0, 350), new LimbPoint(0, -5), new LimbPoint(0, 0), new LimbPoint(100, 300)))
                .isEmpty();
    }

    private static final LegAxis LEG = new LegAxis(new Length(350), new Length(280));

    /** The upper axis upright through the centre at the origin, the lower one leaning inwards by the angle. */
    private static HingeCorrection varusBone(double degrees, LimbPoint hinge) {
        double sine = Math.sin(Math.toRadians(degrees));
        double cosine = Math.cos(Math.toRadians(degrees));
        return new HingeCorrection(
                new BoneLine(new LimbPoint(0, 100), new LimbPoint(0, 10)),
                new BoneLine(new LimbPoint(-10 * sine, -10 * cosine), new LimbPoint(-100 * sine, -100 * cosine)),
                hinge);
    }
}
