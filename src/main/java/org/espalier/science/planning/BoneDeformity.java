package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;

/**
 * How the distal fragment of a bone stands to its proximal one.
 *
 * <p>Angulation is seen on two films square to each other; torsion is the twist, each reference line laid into the
 * plane across its own fragment (an angle measured on the table of a CT differs once the angulation passes 15 to 20
 * degrees).
 *
 * @param varus from the front, + varus (distal end towards medial), − valgus, within 80 degrees
 * @param procurvatum from the side, + apex in front, − recurvatum, within 80 degrees
 * @param internalTorsion of the distal fragment, + inwards, − outwards, within 150 degrees
 */
public record BoneDeformity(Angle varus, Angle procurvatum, Angle internalTorsion) {

    private static final double MOST_ANGULATION = 80;
    private static final double MOST_TORSION = 150;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if an angle is out of range
     */
    public BoneDeformity {
        requireWithin("varus or valgus", varus, MOST_ANGULATION);
        requireWithin("procurvatum or recurvatum", procurvatum, MOST_ANGULATION);
        requireWithin("torsion", internalTorsion, MOST_TORSION);
    }

    /** A deformity in degrees: varus, procurvatum, internal torsion. */
    public static BoneDeformity ofDegrees(double varus, double procurvatum, double internalTorsion) {
        return new BoneDeformity(
                Angle.ofDegrees(varus), Angle.ofDegrees(procurvatum), Angle.ofDegrees(internalTorsion));
    }

    /** The plane in which the bone is bent, and how much. */
    public TruePlane truePlane() {
        return TruePlane.of(varus, procurvatum);
    }

    /** The turn that brings the proximal fragment's directions to the distal one's. */
    Turn turn(TrueFragment onFilm) {
        Turn swing = swing();
        Turn twist = Turn.about(Bearing.PROXIMAL, internalTorsion);
        return onFilm == TrueFragment.PROXIMAL ? swing.after(twist) : twist.after(swing);
    }

    private Turn swing() {
        Bearing axis = new Bearing(-Math.tan(procurvatum.toRadians()), Math.tan(varus.toRadians()), 0);
        return axis.length() == 0
                ? new Turn(1, axis)
                : Turn.about(axis, truePlane().angulation());
    }

    /** The deformity a turn amounts to, as films true to the proximal fragment show it. */
    static BoneDeformity of(Turn turn) {
        Bearing shaft = turn.apply(Bearing.PROXIMAL);
        Turn twist = turn.twist();
        return new BoneDeformity(
                Angle.ofRadians(Math.atan2(shaft.lateral(), shaft.proximal())),
                Angle.ofRadians(Math.atan2(shaft.anterior(), shaft.proximal())),
                Angle.ofRadians(folded(2 * Math.atan2(twist.vector().proximal(), twist.scalar()))));
    }

    private static double folded(double radians) {
        return Math.IEEEremainder(radians, 2 * Math.PI);
    }

    private static void requireWithin(String what, Angle angle, double most) {
        if (Math.abs(angle.degrees()) > most) {
            throw new IllegalArgumentException(
                    "A " + what + " lies within " + most + " degrees, not at " + angle.degrees());
        }
    }
}
