package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * What turning the distal fragment about a hinge does to the two axes of a bone, seen from the front.
 *
 * <p>With H the hinge and the full angle corrected the axes end parallel, beside each other by
 * {@code dist(H, distal axis) − dist(H, proximal axis)}, signed. It is nought just when the hinge lies on the bisector
 * through the crossing of the axes; with the hinge on the proximal axis at a distance c from the crossing it is c sin
 * θ. A plate at the physis is such a hinge too.
 *
 * <p>Source: plane geometry; the three rules of cut and hinge in own words after Principles of Deformity Correction,
 * 2002 (from memory).
 *
 * @param proximal axis of the upper fragment
 * @param distal axis of the lower fragment
 * @param hinge about which the lower fragment turns
 */
public record HingeCorrection(BoneLine proximal, BoneLine distal, LimbPoint hinge) {

    /** Which of the three rules of cut and hinge applies. */
    public enum Rule {
        /** Cut and hinge at the centre: pure angulation, axes in one line. */
        PURE_ANGULATION,
        /** Hinge at the centre, cut elsewhere: angulation and a shift at the cut, axes in one line. */
        ANGULATION_AND_SHIFT_AT_THE_CUT,
        /** Hinge away from the centre: the axes end parallel, beside each other. */
        AXES_BESIDE_EACH_OTHER
    }

    /** The correction that makes the axes parallel, + swings the lower fragment outwards (corrects varus). */
    public Angle angle() {
        return Angle.ofDegrees(-proximal.towardsLateral(distal).degrees());
    }

    /**
     * How far the axes lie beside each other after it.
     *
     * @return millimetres, + when the lower axis ends lateral
     */
    public Length axesBesideEachOther() {
        return new Length(proximal.beside(hinge) - distal.beside(hinge));
    }

    /**
     * The distance the bone ends shift along the chord at a cut away from the hinge: 2 c sin(θ/2).
     *
     * @param cutToHinge distance along the bone, not negative
     */
    public Length shiftAtCut(Length cutToHinge) {
        return new Length(2 * Math.abs(cutToHinge.millimetres()) * Math.sin(Math.abs(angle().toRadians()) / 2));
    }

    /**
     * The rule that applies.
     *
     * @param cutToHinge distance of the cut from the hinge
     * @param tolerance what counts as the same place
     */
    public Rule rule(Length cutToHinge, Length tolerance) {
        if (axesBesideEachOther().abs().compareTo(tolerance) > 0) {
            return Rule.AXES_BESIDE_EACH_OTHER;
        }
        return cutToHinge.abs().compareTo(tolerance) > 0 ? Rule.ANGULATION_AND_SHIFT_AT_THE_CUT : Rule.PURE_ANGULATION;
    }

    /** The lower axis after the correction. */
    public BoneLine corrected() {
        return new BoneLine(
                distal.upper().turnedAbout(hinge, angle()), distal.lower().turnedAbout(hinge, angle()));
    }
}
