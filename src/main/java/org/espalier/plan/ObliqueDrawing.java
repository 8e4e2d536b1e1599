package org.espalier.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.planning.ObliqueCut;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A round bone with its cut, from the front and from the side, at true size where the paper holds it. The rim of the
 * cut is drawn out where it is seen and dashed behind; the thick line is the one an angle is told of. From the front
 * the limb faces the reader as on its film; in the side view the front is on the left.
 */
final class ObliqueDrawing {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double[] RATIOS = {1, 1.5, 2, 3, 4};
    private static final double WIDTH = 510;
    private static final double MARGIN = 26;
    private static final double MOST_BONE = 170;
    private static final double MOST_HEIGHT = 400;
    private static final double BAR_MM = 20;
    private static final double BESIDE_MM = 18;
    private static final int STEPS = 24;

    private final Markup svg;
    private final ObliqueCut cut;
    private final double scale;
    private final double bone;
    private final double height;
    private final double middle;

    private ObliqueDrawing(Markup svg, ObliqueCut cut, Length diameter, double ratio, double tallMm) {
        this.svg = svg;
        this.cut = cut;
        scale = POINTS_PER_MM / ratio;
        bone = scale * diameter.millimetres();
        height = Math.min(MOST_HEIGHT, scale * tallMm) + 2 * MARGIN;
        middle = height / 2;
    }

    /** The scale of the drawing, as in 1 : n. */
    static double ratio(ObliqueCut cut, Length diameter, Optional<Double> below) {
        double tall = tall(cut, diameter, below);
        for (double ratio : RATIOS) {
            if (POINTS_PER_MM / ratio * diameter.millimetres() <= MOST_BONE
                    && POINTS_PER_MM / ratio * tall <= MOST_HEIGHT) {
                return ratio;
            }
        }
        return RATIOS[RATIOS.length - 1];
    }

    private static double tall(ObliqueCut cut, Length diameter, Optional<Double> below) {
        return Math.max(
                cut.lengthAlongBone(diameter).millimetres() + 2 * BESIDE_MM, 2 * (below.orElse(0.0) + BESIDE_MM));
    }

    static void draw(ObliqueCut cut, Length diameter, Optional<Double> below, boolean isLeft, Markup parent) {
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "10");
        double ratio = ratio(cut, diameter, below);
        var drawing = new ObliqueDrawing(svg, cut, diameter, ratio, tall(cut, diameter, below));
        svg.with("height", drawing.height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.2f", WIDTH, drawing.height));
        double away = isLeft ? 1 : -1;
        drawing.view(
                125,
                new View(
                        "plan.draw.front",
                        isLeft ? "kit.medial" : "kit.lateral",
                        isLeft ? "kit.lateral" : "kit.medial",
                        cut.frontalLine(),
                        at -> away * Math.cos(at),
                        Math::sin));
        drawing.view(
                355,
                new View(
                        "plan.draw.side",
                        "plan.draw.anterior",
                        "plan.draw.posterior",
                        cut.lateralLine(),
                        at -> -Math.sin(at),
                        Math::cos));
        drawing.write(2, 18, Texts.text(isLeft ? "plan.letter.LEFT" : "plan.letter.RIGHT"), Ink.INK, "start")
                .with("font-size", "20")
                .with("font-weight", "600");
        drawing.bar();
        below.ifPresent(drawing::tubercle);
    }

    /**
     * One view of the round bone; places on its rim are told by their turn from lateral towards anterior.
     *
     * @param across where on the paper a place of the rim lies, −1 left to 1 right
     * @param near positive where it is on the side of the viewer
     */
    private record View(
            String name,
            String left,
            String right,
            Angle angle,
            DoubleUnaryOperator across,
            DoubleUnaryOperator near) {}

    private void view(double centre, View view) {
        double half = bone / 2;
        svg.svg("rect")
                .with("x", centre - half)
                .with("y", MARGIN)
                .with("width", bone)
                .with("height", height - 2 * MARGIN)
                .with("fill", Ink.PALE)
                .with("stroke", Ink.INK);
        for (int step = 0; step < 2 * STEPS; step++) {
            double from = Math.PI * step / STEPS;
            double to = Math.PI * (step + 1) / STEPS;
            rim(centre, view, from, to);
        }
        line(centre, view);
        write(centre, 14, Texts.text(view.name), Ink.INK, "middle").with("font-weight", "600");
        write(centre - half - 5, MARGIN + 10, Texts.text(view.left), Ink.QUIET, "end");
        write(centre + half + 5, MARGIN + 10, Texts.text(view.right), Ink.QUIET, "start");
        write(centre, height - 8, Texts.text("plan.draw.angle", Math.abs(view.angle.degrees())), Ink.INK, "middle");
    }

    private void rim(double centre, View view, double from, double to) {
        boolean seen = view.near.applyAsDouble((from + to) / 2) > 0;
        var points = IntStream.rangeClosed(0, 2)
                .mapToDouble(i -> from + (to - from) * i / 2)
                .mapToObj(at -> String.format(
                        Locale.ROOT, "%.2f,%.2f", centre + bone / 2 * view.across.applyAsDouble(at), level(at)))
                .collect(Collectors.joining(" "));
        svg.svg("polyline")
                .with("points", points)
                .with("fill", "none")
                .with("stroke", seen ? Ink.INK : Ink.QUIET)
                .with("stroke-width", seen ? "1.2" : "0.8")
                .with("stroke-dasharray", seen ? "none" : "2 2.2");
    }

    /** Where on the paper the cut meets the rim of the bone. */
    private double level(double at) {
        var normal = cut.normal();
        double rise = -(normal.lateral() * Math.cos(at) + normal.anterior() * Math.sin(at)) / normal.proximal();
        return Math.clamp(middle - bone / 2 * rise, MARGIN, height - MARGIN);
    }

    private void line(double centre, View view) {
        double left = view.across.applyAsDouble(0) == 0 ? Math.PI / 2 : view.across.applyAsDouble(0) > 0 ? Math.PI : 0;
        double right = left + Math.PI;
        svg.svg("line")
                .with("x1", centre - bone / 2)
                .with("y1", level(left))
                .with("x2", centre + bone / 2)
                .with("y2", level(right))
                .with("stroke", Ink.INK)
                .with("stroke-width", "2.2");
    }

    /** The lower end of the tubercle at the front of the side view, and how far below it the middle of the cut lies. */
    private void tubercle(double below) {
        double x = 355 - bone / 2;
        double y = middle - scale * below;
        if (y < MARGIN) {
            return;
        }
        svg.svg("path")
                .with("d", String.format(Locale.ROOT, "M%.2f %.2f q -9 -3 -2 -14 l 2 -2 z", x, y))
                .with("fill", Ink.PALE)
                .with("stroke", Ink.INK);
        rule(x - 26, y, x - 2, y, "0.6");
        rule(x - 26, middle, x, middle, "0.6");
        rule(x - 20, y, x - 20, middle, "0.9");
        write(x - 24, (y + middle) / 2 + 3, Texts.text("plan.draw.level", below), Ink.QUIET, "end");
    }

    /** Twenty millimetres, so that a copy at another size can be told. */
    private void bar() {
        double x = WIDTH - 10;
        rule(x, MARGIN, x, MARGIN + BAR_MM * scale, "2");
        write(x - 5, MARGIN + BAR_MM / 2 * scale + 4, Texts.text("plan.draw.ruler"), Ink.QUIET, "end");
    }

    private void rule(double x1, double y1, double x2, double y2, String thickness) {
        svg.svg("line")
                .with("x1", x1)
                .with("y1", y1)
                .with("x2", x2)
                .with("y2", y2)
                .with("stroke", Ink.INK)
                .with("stroke-width", thickness);
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
