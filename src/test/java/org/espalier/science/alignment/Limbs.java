package org.espalier.science.alignment;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.espalier.science.quantity.PixelPoint;

/** Limbs of known geometry for tests, and ways to lay them on a film. */
final class Limbs {

    private Limbs() {}

    /** Landmarks from rows of name, x and y separated by blanks. */
    static LimbLandmarks of(String rows) {
        Map<Landmark, PixelPoint> points = new EnumMap<>(Landmark.class);
        rows.strip()
                .lines()
                .map(row -> row.strip().split("\\s+"))
                .forEach(cell -> points.put(
                        Landmark.ofCode(cell[0]).orElseThrow(),
                        new PixelPoint(Double.parseDouble(cell[1]), Double.parseDouble(cell[2]))));
        return new LimbLandmarks(points);
    }

    static LimbLandmarks moved(LimbLandmarks limb, UnaryOperator<PixelPoint> move) {
        Map<Landmark, PixelPoint> points = new EnumMap<>(Landmark.class);
        limb.points().forEach((landmark, point) -> points.put(landmark, move.apply(point)));
        return new LimbLandmarks(points);
    }

    static UnaryOperator<PixelPoint> mirrored() {
        return point -> new PixelPoint(-point.x(), point.y());
    }

    static UnaryOperator<PixelPoint> tilted(double degrees) {
        double cos = Math.cos(Math.toRadians(degrees));
        double sin = Math.sin(Math.toRadians(degrees));
        return point -> new PixelPoint(cos * point.x() - sin * point.y(), sin * point.x() + cos * point.y());
    }

    static UnaryOperator<PixelPoint> stretched(double x, double y) {
        return point -> new PixelPoint(point.x() * x, point.y() * y);
    }
}
