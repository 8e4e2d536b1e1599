package org.espalier.science.planning;

import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * The axes of two fragments in space: the proximal one is the upright through the origin, the distal one passes a
 * point.
 *
 * <p>Where the crossings seen from the front and from the side lie at different heights the fragments are shifted
 * against each other, or a film was not true.
 *
 * <p>Source: closest approach of two straight lines, elementary geometry.
 *
 * @param through a point of the distal axis, millimetres
 * @param deformity how the distal axis leans; its torsion plays no part
 */
public record SpatialAxes(Bearing through, BoneDeformity deformity) {

    /**
     * The height at which the axes cross as seen from the front.
     *
     * @throws IllegalArgumentException if they are parallel there
     */
    public Length crossingFromFront() {
        return crossing(through.lateral(), deformity.varus());
    }

    /**
     * The height at which the axes cross as seen from the side.
     *
     * @throws IllegalArgumentException if they are parallel there
     */
    public Length crossingFromSide() {
        return crossing(through.anterior(), deformity.procurvatum());
    }

    /** How far the axes pass each other where they come closest. */
    public Length gap() {
        Bearing across = Bearing.PROXIMAL.cross(direction());
        return new Length(Math.abs(through.dot(across.unit())));
    }

    /** The height on the proximal axis where the distal one comes closest. */
    public Length closestHeight() {
        Bearing direction = direction();
        double horizontal = direction.lateral() * direction.lateral() + direction.anterior() * direction.anterior();
        double along =
                -(through.lateral() * direction.lateral() + through.anterior() * direction.anterior()) / horizontal;
        return new Length(through.proximal() + along * direction.proximal());
    }

    private Length crossing(double beside, Angle lean) {
        if (Math.abs(lean.degrees()) < 1) {
            throw new IllegalArgumentException("Axes within a degree of each other cross nowhere that can be told");
        }
        return new Length(through.proximal() - beside / Math.tan(lean.toRadians()));
    }

    private Bearing direction() {
        return new Bearing(
                -Math.tan(deformity.varus().toRadians()),
                -Math.tan(deformity.procurvatum().toRadians()),
                -1);
    }
}
