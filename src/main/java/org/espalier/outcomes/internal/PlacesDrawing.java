package org.espalier.outcomes.internal;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;

/** Where films fell in what was foretold of them, tenth by tenth. */
public final class PlacesDrawing {

    private PlacesDrawing() {}

    /** @param places films in each tenth, the lowest first */
    public static void draw(List<Integer> places, Markup page) {
        int all = places.stream().mapToInt(Integer::intValue).sum();
        int most = Math.max(4, Collections.max(places) + 1);
        int step = Math.max(1, Math.ceilDiv(most, 4));
        var plot = Plot.of(page, 1, step * 4, 1);
        plot.left(step, "outcomes.tick");
        for (int tenth = 0; tenth < places.size(); tenth++) {
            plot.bar((double) tenth / places.size(), (tenth + 1.0) / places.size(), places.get(tenth));
        }
        double even = (double) all / places.size();
        plot.limit(Stream.of(new Plot.At(0, even), new Plot.At(1, even)), Plot.Stroke.DASHED);
        plot.below(0.25, "outcomes.tick.share", Texts.text("outcomes.axis.place"));
        plot.legend(0, Plot.Stroke.DASHED, Ink.QUIET, Texts.text("outcomes.places.even", even));
    }
}
