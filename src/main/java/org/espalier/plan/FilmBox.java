package org.espalier.plan;

import java.util.List;
import org.espalier.plan.CutAnswer.Point;

/** A part of a film, in its pixels. */
record FilmBox(double x, double y, double width, double height) {

    private static final double ABOVE = 0.06;
    private static final double BESIDE = 0.14;

    /** What holds a limb before and after a cut, with some film beside it. */
    static FilmBox of(CutAnswer answer) {
        List<Point> points = answer.lines().stream()
                .filter(line -> line.kind().endsWith("before") || line.kind().endsWith("after"))
                .flatMap(line -> line.points().stream())
                .toList();
        double left = points.stream().mapToDouble(Point::x).min().orElse(0);
        double right = points.stream().mapToDouble(Point::x).max().orElse(1);
        double top = points.stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = points.stream().mapToDouble(Point::y).max().orElse(1);
        double tall = bottom - top;
        return new FilmBox(
                left - BESIDE * tall, top - ABOVE * tall, right - left + 2 * BESIDE * tall, tall * (1 + 2 * ABOVE));
    }
}
