package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.hipparchus.geometry.euclidean.twod.Line;
import org.hipparchus.geometry.euclidean.twod.Vector2D;

/**
 * What must hold for every limb. The identities are arithmetic of the angles' definitions; lines, distances and
 * crossings are refereed by Hipparchus, a general geometry library.
 */
class AlignmentIdentityTests {

    private static final Calibration MILLIMETRES = Calibration.ofStated(PixelScale.ofSquare(1));

    /** Rounding of a few dozen operations on coordinates of hundreds of millimetres stays far below. */
    private static final double EXACT = 1e-9;

    @Property
    void kneeAngleIsTheSumOfBonesAndJoint(@ForAll("limbs") LimbLandmarks limb) {
        LimbNumbers numbers = measure(limb);
        assertThat(value(numbers, Quantity.HKA))
                .isCloseTo(
                        value(numbers, Quantity.MLDFA) - value(numbers, Quantity.MMPTA) + value(numbers, Quantity.JLCA),
                        within(EXACT));
        assertThat(value(numbers, Quantity.BONY_HKA))
                .isCloseTo(value(numbers, Quantity.HKA) - value(numbers, Quantity.JLCA), within(EXACT));
    }

    /**
     * Tibial shaft laid on the tibial mechanical axis, so that the femur's own offset alone separates the two angles.
     */
    @Property
    void shaftAngleIsTheFemoralOffsetLessTheKneeAngle(@ForAll("limbs") LimbLandmarks limb) {
        LimbLandmarks onAxis = limb.with(Landmark.TIBIA_SHAFT_PROXIMAL, middle(limb, "PLATEAU"))
                .with(Landmark.TIBIA_SHAFT_DISTAL, middle(limb, "PLAFOND"));
        LimbNumbers numbers = measure(onAxis);
        double femoralOffset = value(numbers, Quantity.MLDFA) - value(numbers, Quantity.ALDFA);
        assertThat(value(numbers, Quantity.ATFA))
                .isCloseTo(femoralOffset - value(numbers, Quantity.HKA), within(EXACT));
    }

    @Property
    void deviationFollowsFromLengthsAndAngleWhenTheKneeHasOneCentre(@ForAll("limbs") LimbLandmarks limb) {
        LimbLandmarks closed = limb.with(Landmark.PLATEAU_MEDIAL, at(limb, Landmark.CONDYLE_MEDIAL))
                .with(Landmark.PLATEAU_LATERAL, at(limb, Landmark.CONDYLE_LATERAL));
        LimbNumbers numbers = measure(closed);
        double femur = value(numbers, Quantity.FEMUR_LENGTH);
        double tibia = value(numbers, Quantity.TIBIA_LENGTH);
        double deviation = Math.toRadians(value(numbers, Quantity.HKA));
        assertThat(value(numbers, Quantity.MAD))
                .isCloseTo(
                        -femur
                                * tibia
                                * Math.sin(deviation)
                                / Math.sqrt(femur * femur + tibia * tibia + 2 * femur * tibia * Math.cos(deviation)),
                        within(EXACT));
    }

    @Property
    void numbersDoNotDependOnHowTheFilmLies(@ForAll("limbs") LimbLandmarks limb, @ForAll("degrees") double tilt) {
        LimbNumbers upright = measure(limb);
        LimbNumbers turned = measure(Limbs.moved(Limbs.moved(limb, Limbs.tilted(tilt)), Limbs.mirrored()));
        for (Quantity quantity : Quantity.frontal()) {
            assertThat(value(turned, quantity)).as(quantity.code()).isCloseTo(value(upright, quantity), within(EXACT));
        }
    }

    @Property
    void agreesWithAGeometryLibrary(@ForAll("limbs") LimbLandmarks limb) {
        LimbNumbers numbers = measure(limb);
        Vector2D hip = vector(at(limb, Landmark.HIP_CENTRE));
        Vector2D condyles = vector(middle(limb, "CONDYLE"));
        Vector2D plateau = vector(middle(limb, "PLATEAU"));
        Vector2D ankle = vector(middle(limb, "PLAFOND"));
        Vector2D medial = vector(at(limb, Landmark.PLATEAU_MEDIAL));
        Vector2D lateral = vector(at(limb, Landmark.PLATEAU_LATERAL));
        Line limbAxis = new Line(hip, ankle, 1e-10);
        Vector2D knee = new Vector2D(0.5, condyles, 0.5, plateau);

        assertThat(Math.abs(value(numbers, Quantity.HKA)))
                .isCloseTo(
                        Math.toDegrees(Vector2D.angle(condyles.subtract(hip), ankle.subtract(plateau))), within(EXACT));
        assertThat(value(numbers, Quantity.MMPTA))
                .isCloseTo(
                        Math.toDegrees(Vector2D.angle(ankle.subtract(plateau), medial.subtract(lateral))),
                        within(EXACT));
        assertThat(Math.abs(value(numbers, Quantity.MAD))).isCloseTo(limbAxis.distance(knee), within(EXACT));
        Vector2D crossing = limbAxis.intersection(new Line(medial, lateral, 1e-10));
        Vector2D plateauLine = lateral.subtract(medial);
        assertThat(value(numbers, Quantity.WBL))
                .isCloseTo(
                        100 * crossing.subtract(medial).dotProduct(plateauLine) / plateauLine.getNormSq(),
                        within(1e-7));
        assertThat(value(numbers, Quantity.LIMB_LENGTH)).isCloseTo(Vector2D.distance(hip, ankle), within(EXACT));
    }

    @Provide
    Arbitrary<Double> degrees() {
        return Arbitraries.doubles().between(-180, 180).edgeCases(only -> only.includeOnly(-90.0, 0.0, 180.0));
    }

    /** Limbs from a toddler's to an adult's, bowed or knocked by up to 35 degrees at each level. */
    @Provide
    Arbitrary<LimbLandmarks> limbs() {
        Arbitrary<Double> size = Arbitraries.doubles().between(0.3, 1.2).edgeCases(only -> only.includeOnly(1.0));
        Arbitrary<Double> bend = Arbitraries.doubles().between(-35, 35).edgeCases(only -> only.includeOnly(0.0));
        Arbitrary<Double> slope = Arbitraries.doubles().between(-12, 12).edgeCases(only -> only.includeOnly(0.0));
        Arbitrary<Double> shift = Arbitraries.doubles().between(-6, 6).edgeCases(only -> only.includeOnly(0.0));
        return Combinators.combine(size, bend, slope, slope, slope, shift, shift)
                .as((scale, hka, femur, tibia, ankle, offset, wobble) ->
                        limb(scale, hka, femur, tibia, ankle, offset, wobble));
    }

    private static LimbLandmarks limb(
            double scale, double hka, double femur, double tibia, double ankle, double offset, double wobble) {
        Map<Landmark, PixelPoint> points = new EnumMap<>(Landmark.class);
        PixelPoint condyles = new PixelPoint(0, 400 * scale);
        PixelPoint plateau = new PixelPoint(offset * scale, 406 * scale);
        PixelPoint plafond = new PixelPoint(
                plateau.x() - 340 * scale * Math.sin(Math.toRadians(hka)),
                plateau.y() + 340 * scale * Math.cos(Math.toRadians(hka)));
        points.put(Landmark.HIP_CENTRE, new PixelPoint(0, 0));
        points.put(Landmark.HEAD_TOP, new PixelPoint(0, -20 * scale));
        points.put(Landmark.TROCHANTER_TIP, new PixelPoint(45 * scale, wobble * scale));
        points.put(Landmark.FEMUR_SHAFT_PROXIMAL, new PixelPoint((30 + wobble) * scale, 120 * scale));
        points.put(Landmark.FEMUR_SHAFT_DISTAL, new PixelPoint(10 * scale, 300 * scale));
        points.put(Landmark.TIBIA_SHAFT_PROXIMAL, between(plateau, plafond, 0.3, wobble * scale));
        points.put(Landmark.TIBIA_SHAFT_DISTAL, between(plateau, plafond, 0.8, 0));
        putLine(points, "FEMUR_BEAK", new PixelPoint(0, 375 * scale), 35 * scale, wobble);
        putLine(points, "FEMUR_PHYSIS", new PixelPoint(0, 385 * scale), 36 * scale, femur / 2);
        putLine(points, "CONDYLE", condyles, 35 * scale, femur);
        putLine(points, "PLATEAU", plateau, 35 * scale, tibia);
        putLine(points, "TIBIA_PHYSIS", new PixelPoint(plateau.x(), 418 * scale), 34 * scale, tibia / 2 + hka / 3);
        putLine(points, "BEAK", new PixelPoint(plateau.x(), 428 * scale), 33 * scale, hka / 2);
        putLine(points, "PLAFOND", plafond, 15 * scale, hka + ankle);
        return new LimbLandmarks(points);
    }

    private static void putLine(
            Map<Landmark, PixelPoint> points, String line, PixelPoint middle, double half, double slope) {
        double x = half * Math.cos(Math.toRadians(slope));
        double y = half * Math.sin(Math.toRadians(slope));
        points.put(Landmark.valueOf(line + "_MEDIAL"), new PixelPoint(middle.x() - x, middle.y() - y));
        points.put(Landmark.valueOf(line + "_LATERAL"), new PixelPoint(middle.x() + x, middle.y() + y));
    }

    private static PixelPoint between(PixelPoint from, PixelPoint to, double part, double aside) {
        return new PixelPoint(from.x() + part * (to.x() - from.x()) + aside, from.y() + part * (to.y() - from.y()));
    }

    private static LimbNumbers measure(LimbLandmarks limb) {
        return AlignmentMeasurement.measure(Side.RIGHT, limb, MILLIMETRES);
    }

    private static double value(LimbNumbers numbers, Quantity quantity) {
        return numbers.value(quantity).orElseThrow();
    }

    private static PixelPoint at(LimbLandmarks limb, Landmark landmark) {
        return limb.point(landmark).orElseThrow();
    }

    private static PixelPoint middle(LimbLandmarks limb, String line) {
        PixelPoint medial = at(limb, Landmark.valueOf(line + "_MEDIAL"));
        PixelPoint lateral = at(limb, Landmark.valueOf(line + "_LATERAL"));
        return new PixelPoint((medial.x() + lateral.x()) / 2, (medial.y() + lateral.y()) / 2);
    }

    private static Vector2D vector(PixelPoint point) {
        return new Vector2D(point.x(), point.y());
    }
}
