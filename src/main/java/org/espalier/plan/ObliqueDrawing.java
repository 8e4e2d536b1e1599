package org.espalier.plan;

import java.util.Locale;
import java.util.Optional;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.planning.ObliqueCut;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A round bone with its cut, from the front and from the side, to scale: two points to a millimetre. From the front the limb
 * faces the reader as on its film; in the side view the front is on the left.
 */
final class ObliqueDrawing {

    private static final double SCALE = 2;
    private static final double WIDTH = 480;
    private static final double MARGIN = 26;
    private static final double LEAST_HEIGHT = 160;
    private static final double MOST_HEIGHT = 460;
    private static final String INK = "#1f2a24";
    private static final String QUIET = "#4a564f";
    private static final String BONE = "#e6e1d6";

    private final Markup svg;
    private final double bone;
    private final double height;
    private final double middle;

    private ObliqueDrawing(Markup svg, double bone, double height) {
        this.svg = svg;
        this.bone = bone;
        this.height = height;
        middle = height / 2;
    }

    static void draw(ObliqueCut cut, Length diameter, Optional<Double> below, boolean isLeft, Markup parent) {
        double bone = SCALE * diameter.millimetres();
        double along = SCALE * cut.lengthAlongBone(diameter).millimetres();
        double height = Math.clamp(along + 4 * MARGIN, LEAST_HEIGHT, MOST_HEIGHT);
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, height))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "11");
        var drawing = new ObliqueDrawing(svg, bone, height);
        drawing.view(
                120,
                new View(
                        "plan.draw.front",
                        isLeft ? "kit.medial" : "kit.lateral",
                        isLeft ? "kit.lateral" : "kit.medial",
                        cut.frontalLine(),
                        isLeft ? -1 : 1));
        drawing.view(
                330, new View("plan.draw.side", "plan.draw.anterior", "plan.draw.posterior", cut.lateralLine(), 1));
        drawing.ruler();
        below.ifPresent(drawing::level);
    }

    /**
     * One view.
     *
     * @param rising 1 where a positive angle rises from left to right, −1 where it falls
     */
    private record View(String name, String left, String right, Angle angle, int rising) {}

    private void view(double centre, View view) {
        double half = bone / 2;
        svg.svg("rect")
                .with("x", centre - half)
                .with("y", MARGIN)
                .with("width", bone)
                .with("height", height - 2 * MARGIN)
                .with("fill", BONE)
                .with("stroke", INK);
        double rise = half * Math.tan(view.angle.toRadians()) * view.rising;
        double from = Math.clamp(middle + rise, MARGIN, height - MARGIN);
        double to = Math.clamp(middle - rise, MARGIN, height - MARGIN);
        svg.svg("line")
                .with("x1", centre - half)
                .with("y1", from)
                .with("x2", centre + half)
                .with("y2", to)
                .with("stroke", INK)
                .with("stroke-width", "2.2");
        write(centre, 14, Texts.text(view.name), INK, "middle").with("font-weight", "600");
        write(centre - half - 5, middle, Texts.text(view.left), QUIET, "end");
        write(centre + half + 5, middle, Texts.text(view.right), QUIET, "start");
        write(centre, height - 8, Texts.text("plan.draw.angle", Math.abs(view.angle.degrees())), INK, "middle");
    }

    /** Twenty millimetres, so that a copy at another size can be told. */
    private void ruler() {
        double x = WIDTH - 14;
        svg.svg("line")
                .with("x1", x)
                .with("y1", MARGIN)
                .with("x2", x)
                .with("y2", MARGIN + 20 * SCALE)
                .with("stroke", INK)
                .with("stroke-width", "2");
        write(x - 5, MARGIN + 10 * SCALE + 4, Texts.text("plan.draw.ruler"), QUIET, "end");
    }

    private void level(double below) {
        write(225, middle, Texts.text("plan.draw.level", below), QUIET, "middle")
                .with("font-size", "9");
    }

    private Markup write(double x, double y, String text, String colour, String anchor) {
        return svg.svg("text")
                .with("x", x)
                .with("y", y)
                .with("fill", colour)
                .with("text-anchor", anchor)
                .text(text);
    }
}
