package org.espalier.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.planning.Dome;
import org.espalier.science.planning.Wedge;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A bone of even width from the front with a wedge opened, a wedge to be taken out, and a round cut turned, to scale.
 * The limb faces the reader as on its film.
 */
final class WedgeDrawing {

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double[] RATIOS = {1.5, 2, 3, 4};
    private static final double WIDTH = 510;
    private static final double FIGURE = 155;
    private static final double HEIGHT = 218;
    private static final double MOST_BONE = 100;
    private static final double CUT = 95;
    private static final double TOP = 32;
    private static final double FOOT = 160;
    private static final double BAR_MM = 20;

    private final Markup svg;
    private final Length width;
    private final Angle varus;
    private final double scale;
    /** Where lateral lies on the paper: −1 left, 1 right. */
    private final double lateral;

    private WedgeDrawing(Markup svg, Length width, Angle varus, boolean isLeft) {
        this.svg = svg;
        this.width = width;
        this.varus = varus;
        scale = POINTS_PER_MM / ratio(width);
        lateral = isLeft ? 1 : -1;
    }

    /** The scale of the drawing, as in 1 : n. */
    static double ratio(Length width) {
        for (double ratio : RATIOS) {
            if (POINTS_PER_MM / ratio * width.millimetres() <= MOST_BONE) {
                return ratio;
            }
        }
        return RATIOS[RATIOS.length - 1];
    }

    static void draw(Length width, Angle varus, Optional<Dome> dome, boolean isLeft, Markup parent) {
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", HEIGHT)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, HEIGHT))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "10");
        var drawing = new WedgeDrawing(svg, width, varus, isLeft);
        drawing.opened(FIGURE / 2);
        drawing.closed(1.5 * FIGURE);
        dome.ifPresent(arc -> drawing.round(2.5 * FIGURE, arc));
        drawing.write(2, 18, Texts.text(isLeft ? "plan.letter.LEFT" : "plan.letter.RIGHT"), Ink.INK, "start")
                .with("font-size", "20")
                .with("font-weight", "600");
        drawing.bar();
    }

    private double half() {
        return scale * width.millimetres() / 2;
    }

    /** On the paper the side of the bone that a wedge to be taken out has its base on: outer for varus. */
    private double apex() {
        return varus.degrees() >= 0 ? lateral : -lateral;
    }

    /** After: hinge at the apex, the gap on the other side. */
    private void opened(double centre) {
        double hinge = centre + apex() * half();
        rectangle(centre, TOP, CUT);
        var lower = new double[][] {
            {centre - half(), CUT}, {centre + half(), CUT}, {centre + half(), FOOT}, {centre - half(), FOOT}
        };
        polygon(turned(lower, hinge, CUT), Ink.PALE, "none");
        double base = Wedge.CHORD.base(width, varus.abs()).millimetres();
        titles(centre, "plan.draw.opened", Texts.text("plan.mm-tenths", base));
    }

    /** Before: the wedge that is taken out, dashed, its base at the apex. */
    private void closed(double centre) {
        rectangle(centre, TOP, FOOT);
        double base = scale * Wedge.RIGHT_TRIANGLE.base(width, varus.abs()).millimetres();
        double hinge = centre - apex() * half();
        double out = centre + apex() * half();
        polygon(new double[][] {{hinge, CUT}, {out, CUT}, {out, CUT + base}}, "#ffffff", "3 2");
        titles(
                centre,
                "plan.draw.closed",
                Texts.text(
                        "plan.mm-tenths",
                        Wedge.RIGHT_TRIANGLE.base(width, varus.abs()).millimetres()));
    }

    /** After: the lower part turned about the centre, the arc sliding on itself. */
    private void round(double centre, Dome dome) {
        double radius = scale * dome.radius().millimetres();
        double low = CUT + scale * dome.depth().millimetres() / 2;
        double middle = low - Math.sqrt(radius * radius - half() * half());
        upperRound(centre, middle, radius);
        var arc = arc(centre, middle, radius);
        var lower = new double[arc.length + 2][];
        System.arraycopy(arc, 0, lower, 0, arc.length);
        lower[arc.length] = new double[] {centre + half(), FOOT};
        lower[arc.length + 1] = new double[] {centre - half(), FOOT};
        polygon(turned(lower, centre, middle), Ink.PALE, "none");
        if (middle > TOP) {
            svg.svg("circle")
                    .with("cx", centre)
                    .with("cy", middle)
                    .with("r", "3")
                    .with("fill", "none")
                    .with("stroke", Ink.INK);
        }
        titles(
                centre,
                "plan.draw.round",
                Texts.text("plan.draw.slide", dome.slide(varus).millimetres()));
    }

    /** The arc bulges towards the foot: its centre lies above. */
    private double[][] arc(double centre, double middle, double radius) {
        double reach = Math.asin(half() / radius);
        return IntStream.rangeClosed(-12, 12)
                .mapToObj(i -> new double[] {
                    centre + radius * Math.sin(reach * i / 12), middle + radius * Math.cos(reach * i / 12)
                })
                .toArray(double[][]::new);
    }

    private void upperRound(double centre, double middle, double radius) {
        var arc = arc(centre, middle, radius);
        var upper = new double[arc.length + 2][];
        System.arraycopy(arc, 0, upper, 0, arc.length);
        upper[arc.length] = new double[] {centre + half(), TOP};
        upper[arc.length + 1] = new double[] {centre - half(), TOP};
        polygon(upper, Ink.PALE, "none");
    }

    /** What lies below swings outwards for varus. */
    private double[][] turned(double[][] points, double x, double y) {
        double radians = -lateral * varus.toRadians();
        double sine = Math.sin(radians);
        double cosine = Math.cos(radians);
        return Arrays.stream(points)
                .map(point -> new double[] {
                    x + (point[0] - x) * cosine - (point[1] - y) * sine,
                    y + (point[0] - x) * sine + (point[1] - y) * cosine
                })
                .toArray(double[][]::new);
    }

    private void rectangle(double centre, double from, double to) {
        polygon(
                new double[][] {
                    {centre - half(), from}, {centre + half(), from}, {centre + half(), to}, {centre - half(), to}
                },
                Ink.PALE,
                "none");
    }

    private void polygon(double[][] points, String fill, String dashes) {
        svg.svg("polygon")
                .with(
                        "points",
                        Arrays.stream(points)
                                .map(point -> String.format(Locale.ROOT, "%.2f,%.2f", point[0], point[1]))
                                .collect(Collectors.joining(" ")))
                .with("fill", fill)
                .with("stroke", Ink.INK)
                .with("stroke-dasharray", dashes);
    }

    private void titles(double centre, String name, String number) {
        write(centre, 12, Texts.text(name), Ink.INK, "middle").with("font-weight", "600");
        write(centre, HEIGHT - 4, number, Ink.INK, "middle");
        boolean isLeftLateral = lateral < 0;
        write(
                centre - half() - 4,
                TOP + 10,
                Texts.text(isLeftLateral ? "plan.draw.lat" : "plan.draw.med"),
                Ink.QUIET,
                "end");
        write(
                centre + half() + 4,
                TOP + 10,
                Texts.text(isLeftLateral ? "plan.draw.med" : "plan.draw.lat"),
                Ink.QUIET,
                "start");
    }

    private void bar() {
        double x = WIDTH - 6;
        svg.svg("line")
                .with("x1", x)
                .with("y1", TOP)
                .with("x2", x)
                .with("y2", TOP + BAR_MM * scale)
                .with("stroke", Ink.INK)
                .with("stroke-width", "2");
        write(x - 5, TOP + BAR_MM / 2 * scale + 4, Texts.text("plan.draw.ruler"), Ink.QUIET, "end");
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
