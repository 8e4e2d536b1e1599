package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

class MovedLimbTests {

    private static final Calibration TALL_PIXELS = Calibration.ofStated(PixelScale.of(0.5, 0.7));

    /**
     * A right limb, medial to the right of the film, tibia in varus: a cut below the plateau turned by θ changes HKA by
     * θ.
     */
    @Property
    void turnsTheMeasuredAxisByTheTurn(
            @ForAll @DoubleRange(min = -20, max = 20) double turn,
            @ForAll @DoubleRange(min = -30, max = 30) double hingeX) {
        MovedLimb cut = new MovedLimb(
                CutKind.STRAIGHT,
                PixelPoint.of(400, 900),
                PixelPoint.of(600, 930),
                PixelPoint.of(500 + hingeX, 915),
                Angle.ofDegrees(turn));
        LimbNumbers before = measure(limb());
        LimbNumbers after = measure(cut.apply(limb(), TALL_PIXELS));
        assertThat(value(after, Quantity.MLDFA)).isCloseTo(value(before, Quantity.MLDFA), within(1e-9));
        assertThat(Math.abs(value(after, Quantity.LDTA) - value(before, Quantity.LDTA)))
                .isCloseTo(Math.abs(turn - axisTurn(cut)), within(1e-9));
        assertThat(Math.abs(value(after, Quantity.HKA) - value(before, Quantity.HKA)))
                .isCloseTo(Math.abs(axisTurn(cut)), within(1e-9));
    }

    /**
     * By how much the line from the plateau to the ankle turned, from the ankle's own place: worked out apart from the
     * product.
     */
    private static double axisTurn(MovedLimb cut) {
        PixelPoint ankle = PixelPoint.of(530, 1500);
        PixelPoint moved = cut.turned(ankle, TALL_PIXELS);
        return bearing(moved) - bearing(ankle);
    }

    private static double bearing(PixelPoint ankle) {
        return Math.toDegrees(Math.atan2((500 - ankle.x()) * 0.5, (ankle.y() - 815) * 0.7));
    }

    @Test
    void movesOnlyWhatLiesBelowTheCut() {
        MovedLimb cut = new MovedLimb(
                CutKind.STRAIGHT,
                PixelPoint.of(600, 930),
                PixelPoint.of(400, 900),
                PixelPoint.of(500, 915),
                Angle.ofDegrees(10));
        LimbLandmarks moved = cut.apply(limb(), TALL_PIXELS);
        assertThat(moved.point(Landmark.PLATEAU_MEDIAL)).isEqualTo(limb().point(Landmark.PLATEAU_MEDIAL));
        assertThat(moved.point(Landmark.PLAFOND_MEDIAL)).isNotEqualTo(limb().point(Landmark.PLAFOND_MEDIAL));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MovedLimb(
                        CutKind.STRAIGHT, PixelPoint.of(1, 1), PixelPoint.of(1, 1), PixelPoint.of(1, 1), Angle.ZERO));
    }

    /** A centre above the cut bulges it towards the foot, one below it towards the hip. */
    @Test
    void cutsAlongAnArcAboutTheHinge() {
        var square = Calibration.ofStated(PixelScale.of(0.5, 0.5));
        var down = round(PixelPoint.of(500, 860));
        assertThat(down.radius(square)).isCloseTo(50 * Math.sqrt(1.16), within(1e-9));
        assertThat(down.isBelow(PixelPoint.of(500, 940), square)).isFalse();
        assertThat(down.isBelow(PixelPoint.of(500, 970), square)).isTrue();
        assertThat(down.isBelow(PixelPoint.of(500, 800), square)).isFalse();
        var up = round(PixelPoint.of(500, 940));
        assertThat(up.isBelow(PixelPoint.of(500, 860), square)).isTrue();
        assertThat(up.isBelow(PixelPoint.of(500, 825), square)).isFalse();
        assertThat(up.isBelow(PixelPoint.of(500, 1000), square)).isTrue();
    }

    /** Pixels are not square here: every point of the arc is as far from the hinge, in millimetres, as its ends are. */
    @Test
    void drawsTheArcInMillimetres() {
        var cut = round(PixelPoint.of(500, 860));
        var line = cut.line(TALL_PIXELS);
        assertThat(line).hasSizeGreaterThan(10);
        assertThat(line.getFirst().x()).isCloseTo(400, within(1e-9));
        assertThat(line.getLast().x()).isCloseTo(600, within(1e-9));
        assertThat(line).allSatisfy(point -> assertThat(Math.hypot(0.5 * (point.x() - 500), 0.7 * (point.y() - 860)))
                .isCloseTo(Math.hypot(50, 28), within(1e-9)));
    }

    private static MovedLimb round(PixelPoint centre) {
        return new MovedLimb(
                CutKind.ROUND, PixelPoint.of(400, 900), PixelPoint.of(600, 900), centre, Angle.ofDegrees(10));
    }

    @Test
    void comesBackWhenTurnedBack() {
        PixelPoint point = PixelPoint.of(530, 1500);
        PixelPoint hinge = PixelPoint.of(480, 910);
        MovedLimb there = new MovedLimb(
                CutKind.STRAIGHT, PixelPoint.of(400, 900), PixelPoint.of(600, 900), hinge, Angle.ofDegrees(12));
        MovedLimb back = new MovedLimb(
                CutKind.STRAIGHT, PixelPoint.of(400, 900), PixelPoint.of(600, 900), hinge, Angle.ofDegrees(-12));
        PixelPoint again = back.turned(there.turned(point, TALL_PIXELS), TALL_PIXELS);
        assertThat(again.x()).isCloseTo(point.x(), within(1e-9));
        assertThat(again.y()).isCloseTo(point.y(), within(1e-9));
    }

    private static LimbNumbers measure(LimbLandmarks landmarks) {
        return AlignmentMeasurement.measure(Side.RIGHT, landmarks, TALL_PIXELS);
    }

    private static double value(LimbNumbers numbers, Quantity quantity) {
        return numbers.value(quantity).orElseThrow();
    }

    private static LimbLandmarks limb() {
        return LimbLandmarks.none()
                .with(Landmark.HIP_CENTRE, PixelPoint.of(480, 100))
                .with(Landmark.CONDYLE_LATERAL, PixelPoint.of(440, 800))
                .with(Landmark.CONDYLE_MEDIAL, PixelPoint.of(560, 800))
                .with(Landmark.PLATEAU_LATERAL, PixelPoint.of(442, 810))
                .with(Landmark.PLATEAU_MEDIAL, PixelPoint.of(558, 820))
                .with(Landmark.PLAFOND_LATERAL, PixelPoint.of(500, 1500))
                .with(Landmark.PLAFOND_MEDIAL, PixelPoint.of(560, 1500));
    }
}
