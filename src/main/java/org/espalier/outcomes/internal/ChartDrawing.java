package org.espalier.outcomes.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.outcomes.Honesty;
import org.espalier.science.statistics.RiskAdjustedChart;

/** The risk-adjusted chart of limbs that never reached their target, limb by limb in order of date. */
public final class ChartDrawing {

    private static final int MOST_TICKS = 6;

    private ChartDrawing() {}

    /** Draws the chart with its limit. */
    public static void draw(List<Honesty.ChartPoint> chart, Markup page) {
        double limit = RiskAdjustedChart.DOUBLED_ODDS.limit();
        double highest =
                chart.stream().mapToDouble(one -> one.point().score()).max().orElse(0);
        int limbs = Math.max(4, chart.size());
        var plot = Plot.of(page, limbs, Math.ceil(Math.max(limit, highest) + 0.5), 1);
        plot.left(1, "outcomes.tick");
        plot.below(Math.ceilDiv(limbs, MOST_TICKS), Texts.text("outcomes.axis.limbs"));
        plot.limit(Stream.of(new Plot.At(0, limit), new Plot.At(limbs, limit)), Plot.Stroke.DASHED);
        var points = new ArrayList<Plot.At>();
        points.add(new Plot.At(0, 0));
        for (int at = 0; at < chart.size(); at++) {
            points.add(new Plot.At(at + 1.0, chart.get(at).point().score()));
        }
        plot.line(points.stream(), Plot.Stroke.SOLID, Ink.INK);
        plot.legend(0, Plot.Stroke.DASHED, Ink.QUIET, Texts.text("outcomes.chart.limit", limit));
    }
}
