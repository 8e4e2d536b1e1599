package org.espalier.outcomes.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.outcomes.Came;
import org.espalier.outcomes.Results;
import org.espalier.science.statistics.CumulativeIncidence;

/** What share of growth plates had come to which end, by months since the plate. */
public final class CurveDrawing {

    private static final double STEP_MONTHS = 12;
    private static final double MOST_MONTHS = 60;

    private record Line(Plot.Stroke stroke, String colour) {}

    private CurveDrawing() {}

    /** Draws the ends that came at all. */
    public static void draw(Results results, Markup page) {
        results.curve().ifPresent(curve -> draw(results, curve, page));
    }

    private static void draw(Results results, CumulativeIncidence<Came> curve, Markup page) {
        var ends =
                Stream.of(Came.values()).filter(came -> results.ended(came) > 0).toList();
        double last = Math.min(
                MOST_MONTHS,
                results.plates().stream()
                        .mapToDouble(plate -> plate.months())
                        .max()
                        .orElse(STEP_MONTHS));
        double maxX = STEP_MONTHS * Math.max(2, Math.ceil(last / STEP_MONTHS));
        var plot = Plot.of(page, maxX, 1, ends.size());
        plot.left(0.25, "outcomes.tick.share");
        plot.below(STEP_MONTHS, Texts.text("outcomes.axis.months"));
        for (int row = 0; row < ends.size(); row++) {
            var line = line(ends.get(row));
            plot.line(steps(curve, ends.get(row), last).stream(), line.stroke(), line.colour());
            plot.legend(row, line.stroke(), line.colour(), Texts.of(ends.get(row)));
        }
    }

    private static List<Plot.At> steps(CumulativeIncidence<Came> curve, Came came, double last) {
        var points = new ArrayList<Plot.At>();
        double share = 0;
        points.add(new Plot.At(0, 0));
        for (var step : curve.steps(came)) {
            if (step.time() <= last) {
                points.add(new Plot.At(step.time(), share));
                share = step.estimate().share();
                points.add(new Plot.At(step.time(), share));
            }
        }
        points.add(new Plot.At(last, share));
        return points;
    }

    private static Line line(Came came) {
        return switch (came) {
            case STRAIGHT -> new Line(Plot.Stroke.SOLID, Ink.INK);
            case OVERSHOT -> new Line(Plot.Stroke.DASHED, Ink.INK);
            case SHORT -> new Line(Plot.Stroke.DOTTED, Ink.INK);
            case FAILED -> new Line(Plot.Stroke.LONG, Ink.BARK);
            case GROWTH_ENDED -> new Line(Plot.Stroke.MIXED, Ink.BARK);
            case NOT_FILMED -> new Line(Plot.Stroke.CLOSE, Ink.QUIET);
        };
    }
}
