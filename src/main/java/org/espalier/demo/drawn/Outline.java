package org.espalier.demo.drawn;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.List;

/**
 * Collects the points of an outline, each in the frame it is easiest said in, and draws a smooth curve through them.
 */
final class Outline {

    private final List<Point2D> points = new ArrayList<>();

    /** Points given as x, y pairs, multiplied by a size and brought through a frame. */
    Outline add(AffineTransform frame, double size, double... pairs) {
        for (int i = 0; i < pairs.length; i += 2) {
            points.add(LimbGeometry.at(frame, pairs[i] * size, pairs[i + 1] * size));
        }
        return this;
    }

    Outline add(double size, double... pairs) {
        return add(new AffineTransform(), size, pairs);
    }

    Outline add(Point2D point) {
        points.add(point);
        return this;
    }

    /** Closed, through every point. */
    Path2D closed() {
        return smooth(true);
    }

    /** Open, through every point. */
    Path2D open() {
        return smooth(false);
    }

    /** Closed with straight sides. */
    Path2D polygon() {
        Path2D path = new Path2D.Double();
        for (Point2D p : points) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(p.getX(), p.getY());
            } else {
                path.lineTo(p.getX(), p.getY());
            }
        }
        path.closePath();
        return path;
    }

    private Path2D smooth(boolean closed) {
        Path2D path = new Path2D.Double();
        int count = points.size();
        path.moveTo(points.getFirst().getX(), points.getFirst().getY());
        for (int i = 0; i < (closed ? count : count - 1); i++) {
            Point2D from = point(i, closed);
            Point2D to = point(i + 1, closed);
            double third = from.distance(to) / 3;
            Point2D leaving = direction(i, closed);
            Point2D arriving = direction(i + 1, closed);
            path.curveTo(
                    from.getX() + leaving.getX() * third,
                    from.getY() + leaving.getY() * third,
                    to.getX() - arriving.getX() * third,
                    to.getY() - arriving.getY() * third,
                    to.getX(),
                    to.getY());
        }
        if (closed) {
            path.closePath();
        }
        return path;
    }

    /** Direction of the curve at a point, the nearer neighbour weighing more, so that close points make no loops. */
    private Point2D direction(int index, boolean closed) {
        Point2D before = point(index - 1, closed);
        Point2D here = point(index, closed);
        Point2D after = point(index + 1, closed);
        double back = Math.max(1e-9, before.distance(here));
        double ahead = Math.max(1e-9, here.distance(after));
        double share = back / (back + ahead);
        return new Point2D.Double(
                (here.getX() - before.getX()) / back * (1 - share) + (after.getX() - here.getX()) / ahead * share,
                (here.getY() - before.getY()) / back * (1 - share) + (after.getY() - here.getY()) / ahead * share);
    }

    private Point2D point(int index, boolean closed) {
        int count = points.size();
        return points.get(closed ? Math.floorMod(index, count) : Math.clamp(index, 0, count - 1));
    }
}
