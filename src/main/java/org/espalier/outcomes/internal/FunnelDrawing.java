package org.espalier.outcomes.internal;

import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.espalier.access.SiteId;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.outcomes.Comparison;
import org.espalier.science.statistics.Funnel;
import org.espalier.science.statistics.Interval;

/** Hospitals by how many children and what share of them, within the limits of chance. */
public final class FunnelDrawing {

    private static final int LEGEND_ROWS = 3;

    private FunnelDrawing() {}

    /** @param codes by which each hospital is named */
    public static void draw(Comparison comparison, Map<SiteId, String> codes, Markup page) {
        comparison.funnel().ifPresent(funnel -> draw(comparison, funnel, codes, page));
    }

    private static void draw(Comparison comparison, Funnel funnel, Map<SiteId, String> codes, Markup page) {
        int most = comparison.units().stream()
                .mapToInt(unit -> unit.share().of())
                .max()
                .orElse(1);
        int step = most <= 20 ? 5 : most <= 60 ? 10 : most <= 150 ? 25 : 100;
        int maxX = step * (most / step + 1);
        var plot = Plot.of(page, maxX, 1, LEGEND_ROWS);
        plot.left(0.25, "outcomes.tick.share");
        plot.below(step, Texts.text("outcomes.axis.children"));
        plot.limit(Stream.of(new Plot.At(0, funnel.target()), new Plot.At(maxX, funnel.target())), Plot.Stroke.SOLID);
        limits(plot, funnel, maxX, Funnel.WARNING, Plot.Stroke.DASHED);
        limits(plot, funnel, maxX, Funnel.ALARM, Plot.Stroke.DOTTED);
        comparison
                .units()
                .forEach(unit -> plot.mark(
                        new Plot.At(unit.share().of(), unit.share().share()),
                        unit.hospital().mine(),
                        codes.getOrDefault(unit.hospital().site(), "")));
        plot.legend(0, Plot.Stroke.SOLID, Ink.QUIET, Texts.text("outcomes.funnel.all"));
        plot.legend(1, Plot.Stroke.DASHED, Ink.QUIET, Texts.text("outcomes.funnel.95"));
        plot.legend(2, Plot.Stroke.DOTTED, Ink.QUIET, Texts.text("outcomes.funnel.998"));
    }

    private static void limits(Plot plot, Funnel funnel, int most, double inside, Plot.Stroke stroke) {
        for (ToDoubleFunction<Interval> end : Stream.<ToDoubleFunction<Interval>>of(Interval::low, Interval::high)
                .toList()) {
            plot.limit(
                    IntStream.rangeClosed(1, most)
                            .mapToObj(of -> new Plot.At(of, end.applyAsDouble(funnel.limits(of, inside)))),
                    stroke);
        }
    }
}
