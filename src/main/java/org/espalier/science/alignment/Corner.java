package org.espalier.science.alignment;

import java.util.Optional;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.PlanePoint;

/** The angle at a point between the ways to two others. */
public final class Corner {

    private Corner() {}

    /**
     * The angle between the rays from the corner to either point: cos a = u · v / (|u| |v|), reckoned by atan2 of cross
     * and dot product, so that it stays exact near 0° and 180°. It has no sign: both ends may be exchanged.
     *
     * @param one end of one ray, in the plane
     * @param corner where both begin
     * @param other end of the other ray
     * @return 0 to 180°; empty when an end lies on the corner
     */
    public static Optional<Angle> angle(PlanePoint one, PlanePoint corner, PlanePoint other) {
        double ux = one.x() - corner.x();
        double uy = one.y() - corner.y();
        double vx = other.x() - corner.x();
        double vy = other.y() - corner.y();
        if (Math.hypot(ux, uy) == 0 || Math.hypot(vx, vy) == 0) {
            return Optional.empty();
        }
        return Optional.of(new Angle(Math.toDegrees(Math.atan2(Math.abs(ux * vy - uy * vx), ux * vx + uy * vy))));
    }
}
