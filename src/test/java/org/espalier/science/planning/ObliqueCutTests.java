package org.espalier.science.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Offset;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Vectors worked out from the composition of rotations, last printed digit; the same turns by Hipparchus below. */
class ObliqueCutTests {

    private static final Offset<Double> LAST_DIGIT = within(1e-4);
    private static final Offset<Double> FIFTH_DIGIT = within(1e-5);

    @ParameterizedTest
    @CsvSource({
        "20,0,25,20.0000,50.8313,39.1687,31.9158,0.13670,0.61663,0.77529,77.5000",
        "20,15,25,24.3212,45.1262,44.8738,34.7431,-0.28540,0.64525,0.70866,113.8599",
        "20,-15,25,24.3212,45.1262,44.8738,34.7431,0.53135,0.46418,0.70866,41.1401",
        "-20,0,25,20.0000,50.8313,39.1687,31.9158,-0.13670,-0.61663,0.77529,-102.5000",
        "-12,8,-15,14.2957,46.1463,43.8537,-20.6930,0.30341,0.62285,0.72111,64.0276",
        "15,0,10,15.0000,33.5051,56.4949,18.0119,0.07267,0.83066,0.55201,85.0000",
        "10,0,30,10.0000,71.3232,18.6768,31.5864,0.08288,0.30932,0.94734,75.0000",
        "30,0,30,30.0000,44.0070,45.9930,42.1812,0.18616,0.69475,0.69475,75.0000",
        "45,0,45,45.0000,42.7342,47.2658,62.7994,0.28108,0.67860,0.67860,67.5000",
        "25,10,35,26.4977,51.9396,38.0604,43.6472,-0.03456,0.61552,0.78736,93.2133",
        "5,3,20,5.8231,73.6751,16.3249,20.8222,-0.10038,0.26255,0.95968,110.9226",
        "20,0,0,20,0,90,20,0,1,0,90"
    })
    void findsThePlaneAndTheTurn(
            double varus,
            double procurvatum,
            double torsion,
            double angulation,
            double fromShaft,
            double fromTransverse,
            double rotation,
            double lateral,
            double anterior,
            double proximal,
            double azimuth) {
        ObliqueCut cut = cut(varus, procurvatum, torsion);
        assertThat(cut.deformity().truePlane().angulation().degrees()).isCloseTo(angulation, LAST_DIGIT);
        assertThat(cut.fromShaft().degrees()).isCloseTo(fromShaft, LAST_DIGIT);
        assertThat(cut.fromTransverse().degrees()).isCloseTo(fromTransverse, LAST_DIGIT);
        assertThat(cut.rotation().degrees()).isCloseTo(rotation, LAST_DIGIT);
        assertThat(cut.normal().lateral()).isCloseTo(lateral, FIFTH_DIGIT);
        assertThat(cut.normal().anterior()).isCloseTo(anterior, FIFTH_DIGIT);
        assertThat(cut.normal().proximal()).isCloseTo(proximal, FIFTH_DIGIT);
        assertThat(cut.azimuth().degrees()).isCloseTo(azimuth, LAST_DIGIT);
    }

    @Test
    void cutsStraightAcrossForTorsionAlone() {
        ObliqueCut cut = cut(0, 0, 30);
        assertThat(cut.fromShaft().degrees()).isCloseTo(90, within(1e-9));
        assertThat(cut.rotation().degrees()).isCloseTo(30, within(1e-9));
        assertThat(cut.frontalLine().degrees()).isCloseTo(0, within(1e-9));
        assertThat(cut.lateralLine().degrees()).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"20,0,25,10.0000,38.4973", "20,15,25,-21.9358,42.3184", "30,0,30,15.0000,45.0000"})
    void drawsTheCutOnBothFilms(double varus, double procurvatum, double torsion, double front, double side) {
        ObliqueCut cut = cut(varus, procurvatum, torsion);
        assertThat(cut.frontalLine().degrees()).isCloseTo(front, LAST_DIGIT);
        assertThat(cut.lateralLine().degrees()).isCloseTo(side, LAST_DIGIT);
    }

    @Test
    void turnsTheCutByTheTorsionWhenTheOtherFragmentWasTrue() {
        ObliqueCut distal = ObliqueCut.of(BoneDeformity.ofDegrees(20, 0, 25), TrueFragment.DISTAL);
        ObliqueCut proximal = cut(20, 0, 25);
        assertThat(distal.normal().lateral()).isCloseTo(-0.13670, FIFTH_DIGIT);
        assertThat(distal.normal().anterior()).isCloseTo(0.61663, FIFTH_DIGIT);
        assertThat(distal.azimuth().degrees()).isCloseTo(102.5, LAST_DIGIT);
        assertThat(distal.fromShaft().degrees()).isCloseTo(proximal.fromShaft().degrees(), within(1e-9));
        assertThat(distal.rotation().degrees()).isCloseTo(proximal.rotation().degrees(), within(1e-9));
    }

    /**
     * Residual angulation and torsion of the rule of thumb: inclination atan(i/A), turn √(A² + i²), half turn kept or
     * left out.
     */
    @ParameterizedTest
    @CsvSource({
        "10,10,44.891,14.133,0.87,0.01,-0.03",
        "10,30,71.323,31.586,2.59,0.11,-0.07",
        "20,20,44.561,28.212,3.44,0.11,-0.20",
        "20,30,55.734,35.928,5.15,0.24,-0.30",
        "20,45,65.261,49.032,7.65,0.52,-0.43",
        "30,30,44.007,42.181,7.62,0.39,-0.65",
        "45,45,42.734,62.799,16.56,1.48,-2.04"
    })
    void showsWhatTheRuleOfThumbLeaves(
            double varus,
            double torsion,
            double fromShaft,
            double rotation,
            double withoutHalfTurn,
            double angulationLeft,
            double torsionLeft) {
        ObliqueCut cut = cut(varus, 0, torsion);
        assertThat(cut.fromShaft().degrees()).isCloseTo(fromShaft, within(1e-3));
        assertThat(cut.rotation().degrees()).isCloseTo(rotation, within(1e-3));
        Angle steeper = Angle.ofDegrees(
                Math.toDegrees(Math.atan(torsion / varus)) - cut.fromShaft().degrees());
        Angle further =
                Angle.ofDegrees(Math.hypot(varus, torsion) - cut.rotation().degrees());
        BoneDeformity forgotten = cut.leftBy(steeper, Angle.ofDegrees(torsion / 2), further);
        BoneDeformity kept = cut.leftBy(steeper, Angle.ZERO, further);
        assertThat(forgotten.truePlane().angulation().degrees()).isCloseTo(withoutHalfTurn, within(0.006));
        assertThat(kept.truePlane().angulation().degrees()).isCloseTo(angulationLeft, within(0.006));
        assertThat(kept.internalTorsion().degrees()).isCloseTo(torsionLeft, within(0.006));
    }

    /** Of 20 degrees of varus and 25 of torsion: the half turn left out, and the whole torsion taken in its place. */
    @ParameterizedTest
    @CsvSource({"12.5,-1.3,-4.1", "-12.5,2.2,3.6"})
    void showsWhatAForgottenHalfTurnLeaves(double azimuthBy, double varus, double procurvatum) {
        BoneDeformity left = cut(20, 0, 25).leftBy(Angle.ZERO, Angle.ofDegrees(azimuthBy), Angle.ZERO);
        assertThat(left.varus().degrees()).isCloseTo(varus, within(0.06));
        assertThat(left.procurvatum().degrees()).isCloseTo(procurvatum, within(0.06));
    }

    /** A deformity and its mirror image have cuts that are mirror images: lateral turns round, the turn too. */
    @Property
    void mirrors(
            @ForAll @DoubleRange(min = -45, max = 45) double varus,
            @ForAll @DoubleRange(min = -45, max = 45) double procurvatum,
            @ForAll @DoubleRange(min = 1, max = 60) double torsion,
            @ForAll TrueFragment trueOnFilm) {
        ObliqueCut one = ObliqueCut.of(BoneDeformity.ofDegrees(varus, procurvatum, torsion), trueOnFilm);
        ObliqueCut other = ObliqueCut.of(BoneDeformity.ofDegrees(-varus, procurvatum, -torsion), trueOnFilm);
        assertThat(other.normal().lateral()).isCloseTo(-one.normal().lateral(), within(1e-12));
        assertThat(other.normal().anterior()).isCloseTo(one.normal().anterior(), within(1e-12));
        assertThat(other.normal().proximal()).isCloseTo(one.normal().proximal(), within(1e-12));
        assertThat(other.rotation().degrees()).isCloseTo(-one.rotation().degrees(), within(1e-9));
        assertThat(other.contact()).isCloseTo(one.contact(), within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"5,0,0,1.89,-1.22,-1.58", "0,5,0,-0.65,-1.58,0.30", "0,0,5,-3.06,0.79,-3.88"})
    void showsWhatFiveDegreesOfErrorLeave(
            double steeper, double azimuth, double turn, double varus, double procurvatum, double torsion) {
        BoneDeformity left =
                cut(20, 0, 25).leftBy(Angle.ofDegrees(steeper), Angle.ofDegrees(azimuth), Angle.ofDegrees(turn));
        assertThat(left.varus().degrees()).isCloseTo(varus, within(0.006));
        assertThat(left.procurvatum().degrees()).isCloseTo(procurvatum, within(0.006));
        assertThat(left.internalTorsion().degrees()).isCloseTo(torsion, within(0.006));
    }

    @ParameterizedTest
    @CsvSource({
        "0,0,10,3.0998,-1.4454,0.6031,3.4202",
        "10,0,0,1.4835,3.9713,-3.4202,4.2393",
        "0,10,0,-4.2262,0.9369,0,4.3288"
    })
    void shiftsTheBoneWhenTurnedBesideItsCentre(
            double cx, double cy, double cz, double lateral, double anterior, double proximal, double offset) {
        Bearing image = cut(20, 0, 25).centreAfterTurnAbout(new Bearing(cx, cy, cz));
        assertThat(image.lateral()).isCloseTo(lateral, LAST_DIGIT);
        assertThat(image.anterior()).isCloseTo(anterior, LAST_DIGIT);
        assertThat(image.proximal()).isCloseTo(proximal, LAST_DIGIT);
        assertThat(image.acrossTheBone()).isCloseTo(offset, LAST_DIGIT);
    }

    @Test
    void shiftsTheBoneForAPivotAnywhere() {
        assertThat(cut(20, 0, 25).centreAfterTurnAbout(new Bearing(-15, 5, 20)).acrossTheBone())
                .isCloseTo(8.5836, LAST_DIGIT);
    }

    /** Overlap of two ellipses; checked against 400,000 random points to 0.005. */
    @ParameterizedTest
    @CsvSource({"30,30,0.9541", "45,30,0.8886", "60,20,0.8401", "60,40,0.7140", "75,20,0.6483"})
    void keepsContact(double fromTransverse, double turn, double contact) {
        double inclination = Math.toRadians(fromTransverse);
        var cut = new ObliqueCut(
                new Bearing(Math.sin(inclination), 0, Math.cos(inclination)),
                Angle.ofDegrees(turn),
                BoneDeformity.ofDegrees(1, 0, 1),
                TrueFragment.PROXIMAL);
        assertThat(cut.contact()).isCloseTo(contact, LAST_DIGIT);
    }

    @ParameterizedTest
    @CsvSource({"45,25.0", "30,43.3", "20,68.7"})
    void runsAlongTheBone(double fromShaft, double length) {
        double inclination = Math.toRadians(fromShaft);
        var cut = new ObliqueCut(
                new Bearing(Math.cos(inclination), 0, Math.sin(inclination)),
                Angle.ofDegrees(10),
                BoneDeformity.ofDegrees(1, 0, 1),
                TrueFragment.PROXIMAL);
        assertThat(cut.lengthAlongBone(new Length(25)).millimetres()).isCloseTo(length, within(0.05));
    }

    /**
     * The sixteen patterns of a published clay model: eight ascend, eight descend (Gopalan, Strategies Trauma Limb
     * Reconstr, doi 10.5005/jp-journals-10080-1638, abstract).
     */
    @ParameterizedTest
    @CsvSource({
        "20,0,25,true", "0,20,25,true", "20,20,25,true", "20,-20,25,true",
        "-20,0,-25,true", "0,-20,-25,true", "-20,-20,-25,true", "-20,20,-25,true",
        "20,0,-25,false", "0,20,-25,false", "20,20,-25,false", "20,-20,-25,false",
        "-20,0,25,false", "0,-20,25,false", "-20,-20,25,false", "-20,20,25,false"
    })
    void climbsAsTheSixteenModelsDo(double varus, double procurvatum, double torsion, boolean ascends) {
        ObliqueCut.Climb climb = cut(varus, procurvatum, torsion).climb();
        assertThat(climb == ObliqueCut.Climb.RISES_TO_POSTERIOR || climb == ObliqueCut.Climb.RISES_TO_LATERAL)
                .isEqualTo(ascends);
    }

    @Property
    void leavesNothingWhenMadeExactly(
            @ForAll @DoubleRange(min = -45, max = 45) double varus,
            @ForAll @DoubleRange(min = -45, max = 45) double procurvatum,
            @ForAll @DoubleRange(min = -60, max = 60) double torsion,
            @ForAll TrueFragment trueOnFilm) {
        if (Math.abs(varus) + Math.abs(procurvatum) + Math.abs(torsion) < 0.01) {
            return;
        }
        BoneDeformity left = ObliqueCut.of(BoneDeformity.ofDegrees(varus, procurvatum, torsion), trueOnFilm)
                .left();
        assertThat(left.varus().degrees()).isCloseTo(0, within(1e-9));
        assertThat(left.procurvatum().degrees()).isCloseTo(0, within(1e-9));
        assertThat(left.internalTorsion().degrees()).isCloseTo(0, within(1e-9));
    }

    @Property
    void hasTheSamePlaceInBothFragments(
            @ForAll @DoubleRange(min = 1, max = 45) double varus,
            @ForAll @DoubleRange(min = 1, max = 60) double torsion) {
        ObliqueCut cut = cut(varus, -varus / 2, torsion);
        Bearing image = cut.deformity().turn(TrueFragment.PROXIMAL).apply(cut.normal());
        assertThat(image.minus(cut.normal()).length()).isCloseTo(0, within(1e-12));
    }

    @Property
    void answersSmallErrorsWithSmallErrors(
            @ForAll @DoubleRange(min = 5, max = 40) double varus,
            @ForAll @DoubleRange(min = -40, max = 40) double procurvatum,
            @ForAll @DoubleRange(min = 5, max = 50) double torsion,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double error) {
        ObliqueCut plain = cut(varus, procurvatum, torsion);
        ObliqueCut shifted = cut(varus + error, procurvatum, torsion);
        double mostMoved = 1.5 * Math.abs(error) / Math.abs(plain.rotation().degrees());
        assertThat(shifted.normal().minus(plain.normal()).length()).isLessThan(mostMoved + 1e-9);
        assertThat(shifted.rotation().degrees()).isCloseTo(plain.rotation().degrees(), within(Math.abs(error) + 1e-9));
    }

    /** The same deformity composed by a general geometry library: axis and angle of the whole turn. */
    @Property
    void agreesWithAGeometryLibrary(
            @ForAll @DoubleRange(min = -45, max = 45) double varus,
            @ForAll @DoubleRange(min = 1, max = 45) double procurvatum,
            @ForAll @DoubleRange(min = 1, max = 60) double torsion) {
        Vector3D axis = new Vector3D(-Math.tan(Math.toRadians(procurvatum)), Math.tan(Math.toRadians(varus)), 0);
        double angulation = Math.atan(axis.getNorm());
        Rotation swing = new Rotation(axis, angulation, RotationConvention.VECTOR_OPERATOR);
        Rotation twist = new Rotation(Vector3D.PLUS_K, Math.toRadians(torsion), RotationConvention.VECTOR_OPERATOR);
        Rotation whole = swing.compose(twist, RotationConvention.VECTOR_OPERATOR);
        Vector3D expected = whole.getAxis(RotationConvention.VECTOR_OPERATOR);
        double sign = Math.signum(expected.getZ());
        ObliqueCut cut = cut(varus, procurvatum, torsion);
        assertThat(cut.normal().lateral()).isCloseTo(sign * expected.getX(), within(1e-9));
        assertThat(cut.normal().anterior()).isCloseTo(sign * expected.getY(), within(1e-9));
        assertThat(cut.normal().proximal()).isCloseTo(sign * expected.getZ(), within(1e-9));
        assertThat(cut.rotation().degrees()).isCloseTo(sign * Math.toDegrees(whole.getAngle()), within(1e-9));
    }

    /**
     * A digital bone, made and moved by the geometry library alone: the lower half of a straight bone is bent and
     * twisted, then turned back by what the cut says. Its points come back to where they were, and those on the cut
     * never leave it.
     */
    @Property
    void bringsEveryPointOfADigitalBoneBack(
            @ForAll @DoubleRange(min = -45, max = 45) double varus,
            @ForAll @DoubleRange(min = -45, max = 45) double procurvatum,
            @ForAll @DoubleRange(min = 1, max = 60) double torsion) {
        double across = Math.tan(Math.toRadians(varus));
        double forward = Math.tan(Math.toRadians(procurvatum));
        Vector3D bentTo = new Vector3D(-across, -forward, -1);
        Rotation bend = new Rotation(Vector3D.MINUS_K, bentTo);
        Rotation twist = new Rotation(Vector3D.PLUS_K, Math.toRadians(torsion), RotationConvention.VECTOR_OPERATOR);
        ObliqueCut cut = cut(varus, procurvatum, torsion);
        Vector3D normal = new Vector3D(
                cut.normal().lateral(), cut.normal().anterior(), cut.normal().proximal());
        Rotation back = new Rotation(normal, -cut.rotation().toRadians(), RotationConvention.VECTOR_OPERATOR);
        for (Vector3D straight : new Vector3D[] {
            new Vector3D(0, 0, -180), new Vector3D(12, 0, -60), new Vector3D(0, -12, -120), new Vector3D(-9, 7, -175)
        }) {
            Vector3D deformed = bend.applyTo(twist.applyTo(straight));
            assertThat(back.applyTo(deformed).distance(straight)).isCloseTo(0, within(1e-9));
        }
        Vector3D onTheCut = normal.orthogonal().scalarMultiply(15);
        assertThat(back.applyTo(onTheCut).dotProduct(normal)).isCloseTo(0, within(1e-9));
    }

    @Test
    void refusesAStraightBone() {
        assertThatIllegalArgumentException().isThrownBy(() -> cut(0, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> BoneDeformity.ofDegrees(81, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> BoneDeformity.ofDegrees(0, 0, 151));
    }

    @Test
    void tellsWhenASingleCutIsNoWay() {
        assertThat(SingleCut.plan(BoneDeformity.ofDegrees(0.2, 0, 0.2), TrueFragment.PROXIMAL))
                .isEqualTo(new SingleCut.Refused(SingleCut.Reason.STRAIGHT));
        assertThat(SingleCut.plan(BoneDeformity.ofDegrees(15, 0, 0.5), TrueFragment.PROXIMAL))
                .isEqualTo(new SingleCut.Refused(SingleCut.Reason.ANGULATION_ALONE));
        assertThat(SingleCut.plan(BoneDeformity.ofDegrees(0.5, 0, 20), TrueFragment.PROXIMAL))
                .isEqualTo(new SingleCut.Refused(SingleCut.Reason.TORSION_ALONE));
    }

    @Test
    void flagsACutThatRunsFarAlongTheBone() {
        assertThat(SingleCut.plan(BoneDeformity.ofDegrees(25, 0, 5), TrueFragment.PROXIMAL))
                .isInstanceOfSatisfying(SingleCut.Possible.class, plan -> assertThat(plan.flaggedAsLong())
                        .isTrue());
        assertThat(SingleCut.plan(BoneDeformity.ofDegrees(20, 0, 25), TrueFragment.PROXIMAL))
                .isInstanceOfSatisfying(SingleCut.Possible.class, plan -> assertThat(plan.flaggedAsLong())
                        .isFalse());
    }

    private static ObliqueCut cut(double varus, double procurvatum, double torsion) {
        return ObliqueCut.of(BoneDeformity.ofDegrees(varus, procurvatum, torsion), TrueFragment.PROXIMAL);
    }
}
