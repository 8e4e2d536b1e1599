package org.espalier.outcomes.internal;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;

/** A frame with an axis below and one at the left, narrow enough to be read on a phone. */
final class Plot {

    /** A place by the values of both axes. */
    record At(double x, double y) {}

    /** How a line is told from others without its colour. */
    enum Stroke {
        SOLID("none"),
        DASHED("7 4"),
        DOTTED("2 3"),
        LONG("14 4"),
        MIXED("10 3 2 3"),
        CLOSE("4 2");

        private final String dashes;

        Stroke(String dashes) {
            this.dashes = dashes;
        }
    }

    private static final double WIDTH = 440;
    private static final double LEFT = 48;
    private static final double RIGHT = 428;
    private static final double TOP = 26;
    private static final double BOTTOM = 246;
    private static final double ROW = 18;
    private static final double BELOW = 58;

    private final Markup svg;
    private final double maxX;
    private final double maxY;

    private Plot(Markup svg, double maxX, double maxY) {
        this.svg = svg;
        this.maxX = maxX;
        this.maxY = maxY;
    }

    /**
     * An empty frame.
     *
     * @param maxX the value at the right end, that at the left is 0
     * @param maxY the value at the top, that at the bottom is 0
     * @param rows of words below the axis
     */
    static Plot of(Markup page, double maxX, double maxY, int rows) {
        double height = BOTTOM + BELOW + rows * ROW;
        var svg = page.svg("svg")
                .with("width", WIDTH)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, height))
                .with("font-size", "13");
        return new Plot(svg, maxX, maxY);
    }

    /** Ticks and the name of the axis below, in whole numbers. */
    void below(double step, String name) {
        below(step, "outcomes.tick", name);
    }

    /** @param text key of the words of a value */
    void below(double step, String text, String name) {
        for (double at = 0; at <= maxX + step / 1000; at += step) {
            rule(x(at), BOTTOM, x(at), BOTTOM + 4, Ink.INK);
            write(x(at), BOTTOM + 17, Texts.text(text, at), Ink.QUIET).with("text-anchor", "middle");
        }
        rule(LEFT, BOTTOM, RIGHT, BOTTOM, Ink.INK);
        write((LEFT + RIGHT) / 2, BOTTOM + 34, name, Ink.QUIET).with("text-anchor", "middle");
    }

    /** @param text key of the words of a value */
    void left(double step, String text) {
        for (double at = 0; at <= maxY + step / 1000; at += step) {
            rule(LEFT, y(at), RIGHT, y(at), Ink.PALE);
            write(LEFT - 6, y(at) + 4, Texts.text(text, at), Ink.QUIET).with("text-anchor", "end");
        }
    }

    void line(Stream<At> points, Stroke stroke, String colour) {
        svg.svg("polyline")
                .with("points", places(points))
                .with("fill", "none")
                .with("stroke", colour)
                .with("stroke-width", "2")
                .with("stroke-dasharray", stroke.dashes);
    }

    /** A thin line that says where something lies. */
    void limit(Stream<At> points, Stroke stroke) {
        svg.svg("polyline")
                .with("points", places(points))
                .with("fill", "none")
                .with("stroke", Ink.QUIET)
                .with("stroke-width", "1")
                .with("stroke-dasharray", stroke.dashes);
    }

    void bar(double fromX, double toX, double toY) {
        svg.svg("rect")
                .with("x", x(fromX) + 1)
                .with("y", y(toY))
                .with("width", x(toX) - x(fromX) - 2)
                .with("height", BOTTOM - y(toY))
                .with("fill", Ink.BAND)
                .with("stroke", Ink.BAND_EDGE);
    }

    /** A mark with a word beside it. */
    void mark(At at, boolean filled, String word) {
        svg.svg("circle")
                .with("cx", x(at.x()))
                .with("cy", y(at.y()))
                .with("r", "5")
                .with("fill", filled ? Ink.INK : "#ffffff")
                .with("stroke", Ink.INK)
                .with("stroke-width", "1.5");
        boolean isNearEnd = x(at.x()) > (LEFT + RIGHT) / 2;
        write(x(at.x()) + (isNearEnd ? -9 : 9), y(at.y()) - 7, word, Ink.INK)
                .with("text-anchor", isNearEnd ? "end" : "start");
    }

    /** What a line means, in a row below. */
    void legend(int row, Stroke stroke, String colour, String text) {
        double y = BOTTOM + BELOW + row * ROW;
        svg.svg("line")
                .with("x1", LEFT)
                .with("x2", LEFT + 42)
                .with("y1", y)
                .with("y2", y)
                .with("stroke", colour)
                .with("stroke-width", "2")
                .with("stroke-dasharray", stroke.dashes);
        write(LEFT + 50, y + 4, text, Ink.INK);
    }

    private String places(Stream<At> points) {
        return points.map(at -> String.format(Locale.ROOT, "%.1f,%.1f", x(at.x()), y(at.y())))
                .collect(Collectors.joining(" "));
    }

    private void rule(double x1, double y1, double x2, double y2, String colour) {
        svg.svg("line")
                .with("x1", x1)
                .with("y1", y1)
                .with("x2", x2)
                .with("y2", y2)
                .with("stroke", colour);
    }

    private Markup write(double x, double y, String text, String colour) {
        return svg.svg("text").with("x", x).with("y", y).with("fill", colour).text(text);
    }

    private double x(double value) {
        return LEFT + (RIGHT - LEFT) * Math.clamp(value / maxX, 0, 1);
    }

    private double y(double value) {
        return BOTTOM - (BOTTOM - TOP) * Math.clamp(value / maxY, 0, 1);
    }
}
