package org.espalier.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.patient.Dated;
import org.espalier.science.quantity.Side;

/** Series of one limb above each other on one axis of time, signs as words below them. */
record TimeDrawing(Side side, List<Panel> panels, List<Signs> signs) {

    private static final double WIDTH = 640;
    private static final double LEFT = 80;
    private static final double RIGHT = 572;
    private static final double PANEL = 96;
    private static final double GAP = 42;
    private static final double ROW = 18;

    /** Lines of a sign: its name, and two for what was found. */
    private static final int SIGN_ROWS = 3;

    /** About the width of a letter. */
    private static final double LETTER = 6.5;

    private static final double STEP = 10;

    /** A value of a day. */
    record Point(LocalDate on, double value) {}

    /**
     * One series.
     *
     * @param above what a positive value means
     * @param below what a negative value means
     * @param axis key of a value at the axis
     */
    record Panel(String name, String above, String below, String axis, List<Point> points) {

        private double high() {
            return STEP
                    * Math.max(
                            1,
                            Math.ceil(points.stream()
                                            .mapToDouble(Point::value)
                                            .max()
                                            .orElse(0)
                                    / STEP));
        }

        private double low() {
            return STEP
                    * Math.min(
                            -1,
                            Math.floor(points.stream()
                                            .mapToDouble(Point::value)
                                            .min()
                                            .orElse(0)
                                    / STEP));
        }
    }

    /** A sign as it was found, in words. */
    record Signs(String name, List<Dated<String>> found) {}

    boolean isPossible() {
        return days().findAny().isPresent();
    }

    void draw(Markup parent) {
        double height = GAP + panels.size() * (PANEL + GAP) + SIGN_ROWS * signs.size() * ROW + 2 * ROW;
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, height))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "12");
        new Page(svg).draw();
    }

    private Stream<LocalDate> days() {
        return Stream.concat(
                panels.stream().flatMap(panel -> panel.points().stream()).map(Point::on),
                signs.stream().flatMap(sign -> sign.found().stream()).map(Dated::on));
    }

    private final class Page {

        private final Markup svg;
        private final LocalDate from;
        private final LocalDate to;
        private final LimbMark mark = new LimbMark(side);

        Page(Markup svg) {
            this.svg = svg;
            from = days().min(Comparator.naturalOrder()).orElseThrow().minusMonths(1);
            to = days().max(Comparator.naturalOrder()).orElseThrow().plusMonths(1);
        }

        void draw() {
            double top = GAP;
            for (var panel : panels) {
                panel(panel, top);
                top += PANEL + GAP;
            }
            for (var sign : signs) {
                write(2, top, sign.name(), Ink.INK).with("font-weight", "600");
                found(sign, top + ROW);
                top += SIGN_ROWS * ROW;
            }
            time(top);
        }

        /** What was found where it changed, on a second line where the first is taken. */
        private void found(Signs sign, double top) {
            double free = 0;
            var before = "";
            for (var one : sign.found()) {
                if (!one.value().equals(before)) {
                    double half = one.value().length() * LETTER / 2;
                    boolean isFree = x(one.on()) - half > free;
                    write(x(one.on()), isFree ? top : top + ROW, one.value(), Ink.INK)
                            .with("text-anchor", "middle");
                    free = isFree ? x(one.on()) + half : free;
                    before = one.value();
                }
            }
        }

        private void panel(Panel panel, double top) {
            write(2, top - 16, panel.name(), Ink.INK).with("font-weight", "600");
            double step = panel.high() - panel.low() > 4 * STEP ? 2 * STEP : STEP;
            for (double at = step * Math.ceil(panel.low() / step); at <= panel.high(); at += step) {
                rule(LEFT, y(panel, top, at), RIGHT, y(panel, top, at), at == 0 ? Ink.INK : Ink.RULE);
                write(LEFT - 6, y(panel, top, at) + 4, Texts.text(panel.axis(), Math.abs(at)), Ink.QUIET)
                        .with("text-anchor", "end");
            }
            write(RIGHT + 4, top + 8, panel.above(), Ink.QUIET);
            write(RIGHT + 4, top + PANEL, panel.below(), Ink.QUIET);
            if (panel.points().isEmpty()) {
                write((LEFT + RIGHT) / 2, top + PANEL / 2 - 6, Texts.text("plan.time.unmeasured"), Ink.QUIET)
                        .with("text-anchor", "middle");
            }
            mark.line(
                    svg,
                    panel.points().stream()
                            .map(one ->
                                    String.format(Locale.ROOT, "%.1f,%.1f", x(one.on()), y(panel, top, one.value())))
                            .collect(Collectors.joining(" ")));
            panel.points().forEach(one -> mark.at(svg, x(one.on()), y(panel, top, one.value())));
        }

        private void time(double y) {
            var month = DateTimeFormatter.ofPattern("MMM yyyy", Texts.language());
            long months = Math.max(1, ChronoUnit.MONTHS.between(from, to));
            long every = months > 48 ? 12 : months > 18 ? 6 : 3;
            rule(LEFT, y - 6, RIGHT, y - 6, Ink.QUIET);
            for (long at = 0; at <= months; at += every) {
                var day = from.plusMonths(at);
                rule(x(day), y - 6, x(day), y - 1, Ink.QUIET);
                write(x(day), y + 12, month.format(day), Ink.QUIET).with("text-anchor", "middle");
            }
        }

        private double x(LocalDate day) {
            return LEFT
                    + (double) ChronoUnit.DAYS.between(from, day)
                            / Math.max(1, ChronoUnit.DAYS.between(from, to))
                            * (RIGHT - LEFT);
        }

        private static double y(Panel panel, double top, double value) {
            return top + PANEL - (value - panel.low()) / (panel.high() - panel.low()) * PANEL;
        }

        private void rule(double x1, double y1, double x2, double y2, String stroke) {
            svg.svg("line")
                    .with("x1", x1)
                    .with("y1", y1)
                    .with("x2", x2)
                    .with("y2", y2)
                    .with("stroke", stroke);
        }

        private Markup write(double x, double y, String text, String fill) {
            return svg.svg("text").with("x", x).with("y", y).with("fill", fill).text(text);
        }
    }
}
