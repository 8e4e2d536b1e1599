package org.espalier.plan;

import java.util.Locale;
import java.util.stream.Collectors;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.plan.CutAnswer.Line;
import org.espalier.plan.CutAnswer.Point;

/** The axes of a limb before and after a cut, as on its film: dashed before, drawn out after, the bearing line thin. */
final class AxesDrawing {

    private static final double WIDTH = 200;
    private static final double HEIGHT = 300;
    private static final double MARGIN = 12;

    private AxesDrawing() {}

    static void draw(CutAnswer answer, Markup parent) {
        var points =
                answer.lines().stream().flatMap(line -> line.points().stream()).toList();
        double left = points.stream().mapToDouble(Point::x).min().orElse(0);
        double right = points.stream().mapToDouble(Point::x).max().orElse(1);
        double top = points.stream().mapToDouble(Point::y).min().orElse(0);
        double bottom = points.stream().mapToDouble(Point::y).max().orElse(1);
        double scale = Math.min(
                (WIDTH - 2 * MARGIN) / Math.max(1, right - left), (HEIGHT - 2 * MARGIN) / Math.max(1, bottom - top));
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", HEIGHT)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, HEIGHT))
                .with("font-family", PaperPrinter.FACE + ", sans-serif");
        answer.lines().forEach(line -> svg.svg("polyline")
                .with(
                        "points",
                        line.points().stream()
                                .map(point -> String.format(
                                        Locale.ROOT,
                                        "%.2f,%.2f",
                                        MARGIN + scale * (point.x() - left),
                                        MARGIN + scale * (point.y() - top)))
                                .collect(Collectors.joining(" ")))
                .with("fill", "none")
                .with("stroke", "#1f2a24")
                .with("stroke-width", line.kind().startsWith("bearing") ? "0.7" : "1.8")
                .with("stroke-dasharray", isBefore(line) ? "4 3" : "none"));
    }

    private static boolean isBefore(Line line) {
        return line.kind().endsWith("before");
    }
}
