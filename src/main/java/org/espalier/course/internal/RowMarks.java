package org.espalier.course.internal;

import org.espalier.kit.CourseModel;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** The marks along the foot: bars of plates, visits and missed ones, procedures, examinations, bone ages. */
final class RowMarks {

    private RowMarks() {}

    static void draw(Markup svg, CourseModel.Mark mark, double x, double end, double y, @Nullable Side side) {
        var colour = side == null ? Ink.BARK : Ink.of(side);
        switch (mark.look()) {
            case PLATE -> bar(svg, x, end, y, colour);
            case PLATE_PARKED ->
                bar(svg, x, end, y, "none").with("stroke", colour).with("stroke-dasharray", "3 2");
            case PROCEDURE ->
                path(svg, x, y, "m0 -3.5l3.5 3.5l-3.5 3.5l-3.5 -3.5z").with("fill", colour);
            case VISIT -> path(svg, x, y, "m0 -4v8").with("stroke", colour);
            case VISIT_MISSED ->
                path(svg, x, y, "m-2.2 -2.2l4.4 4.4m0 -4.4l-4.4 4.4").with("stroke", Ink.BERRY);
            case VISIT_DUE ->
                path(svg, x, y, "m-2.5 0a2.5 2.5 0 1 0 5 0a2.5 2.5 0 1 0 -5 0")
                        .with("fill", "none")
                        .with("stroke", colour);
            case EXAMINED, BONE_AGE ->
                path(svg, x, y, "m-2.2 0a2.2 2.2 0 1 0 4.4 0a2.2 2.2 0 1 0 -4.4 0")
                        .with("fill", colour);
        }
        var word = mark.shortText();
        if (word != null) {
            svg.svg("text")
                    .with("x", x + 4)
                    .with("y", y + 2.8)
                    .with("font-size", "7")
                    .with("fill", Ink.QUIET)
                    .text(word);
        }
    }

    private static Markup bar(Markup svg, double x, double end, double y, String fill) {
        return svg.svg("rect")
                .with("x", x)
                .with("y", y - 2.5)
                .with("width", Math.max(1, end - x))
                .with("height", 5)
                .with("fill", fill);
    }

    private static Markup path(Markup svg, double x, double y, String way) {
        return svg.svg("path").with("d", "M" + x + " " + y + way).with("stroke-width", 1.2);
    }
}
