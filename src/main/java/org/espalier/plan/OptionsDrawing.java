package org.espalier.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;

/**
 * The course of bony HKA by each option with a forecast: one line each, named by its number, with its spread at the
 * end.
 */
public final class OptionsDrawing {

    public static final double WIDTH = 720;
    public static final double HEIGHT = 300;

    private static final double LEFT = 84;
    private static final double TOP = 14;
    private static final double BOTTOM = 270;
    private static final double NAMES = 26;
    private static final double SPREAD = 15;
    private static final double STEP = 5;
    private static final double MARGIN = 6;
    private static final double MANY = 40;
    private static final List<String> DASHES = List.of("none", "6 3", "2 2", "9 3 2 3", "12 4", "4 4");

    private final List<OptionOutlook> options;
    private final LocalDate from;
    private final LocalDate to;
    private final double low;
    private final double high;
    private final double step;
    private final Markup svg;

    private OptionsDrawing(List<OptionOutlook> options, Markup svg) {
        this.options = options;
        this.svg = svg;
        var days = options.stream().flatMap(option -> option.course().stream()).toList();
        from = days.stream().map(CourseDay::day).min(Comparator.naturalOrder()).orElseThrow();
        to = days.stream().map(CourseDay::day).max(Comparator.naturalOrder()).orElseThrow();
        low = edge(days, -MARGIN, Math::floor, Double::min);
        high = edge(days, MARGIN, Math::ceil, Double::max);
        step = high - low > MANY ? 2 * STEP : STEP;
    }

    /** So far beyond the middles that most spreads are whole. */
    private static double edge(
            List<CourseDay> days, double margin, DoubleUnaryOperator round, DoubleBinaryOperator outermost) {
        double furthest = days.stream()
                .mapToDouble(day -> day.bonyHka().middle().degrees())
                .reduce(outermost)
                .orElseThrow();
        return 2 * STEP * round.applyAsDouble((furthest + margin) / (2 * STEP));
    }

    /** Whether any of them has a course to draw. */
    public static boolean isPossible(List<OptionOutlook> options) {
        return options.stream().anyMatch(option -> !option.course().isEmpty());
    }

    /** Draws those that have a course; each bears the number it has among those given. */
    public static void draw(List<OptionOutlook> options, Markup parent) {
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", HEIGHT)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, HEIGHT))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "12");
        var drawing = new OptionsDrawing(options, svg);
        drawing.axes();
        IntStream.range(0, options.size())
                .filter(i -> !options.get(i).course().isEmpty())
                .forEach(drawing::line);
    }

    private void axes() {
        for (double degrees = low; degrees <= high; degrees += step) {
            rule(LEFT, y(degrees), right(), y(degrees), degrees == 0 ? Ink.INK : Ink.RULE);
            write(LEFT - 6, y(degrees) + 4, Texts.text("plan.chart.axis", Math.abs(degrees)), Ink.QUIET)
                    .with("text-anchor", "end");
        }
        if (high > 0) {
            write(2, TOP + 4, Texts.text("plan.chart.varus"), Ink.QUIET);
        }
        if (low < 0) {
            write(2, BOTTOM, Texts.text("plan.chart.valgus"), Ink.QUIET);
        }
        var month = DateTimeFormatter.ofPattern("MMM yyyy", Texts.language());
        long months = ChronoUnit.MONTHS.between(from, to);
        long every = months > 36 ? 12 : months > 12 ? 6 : 3;
        for (long at = 0; at <= months; at += every) {
            var day = from.plusMonths(at);
            rule(x(day), BOTTOM, x(day), BOTTOM + 5, Ink.QUIET);
            write(x(day), BOTTOM + 18, month.format(day), Ink.QUIET).with("text-anchor", at == 0 ? "start" : "middle");
        }
    }

    private void line(int index) {
        var course = options.get(index).course();
        var points = course.stream()
                .map(day -> String.format(
                        Locale.ROOT,
                        "%.1f,%.1f",
                        x(day.day()),
                        y(day.bonyHka().middle().degrees())))
                .collect(Collectors.joining(" "));
        svg.svg("polyline")
                .with("points", points)
                .with("fill", "none")
                .with("stroke", Ink.INK)
                .with("stroke-width", "1.6")
                .with("stroke-dasharray", DASHES.get(index % DASHES.size()));
        spread(index, course.getLast());
    }

    /** Side by side right of the lines, so that no bar hides another. */
    private void spread(int index, CourseDay last) {
        double x = right() + NAMES + index * SPREAD;
        var angles = last.bonyHka();
        rule(x, y(angles.low90().degrees()), x, y(angles.high90().degrees()), Ink.QUIET);
        svg.svg("rect")
                .with("x", x - 2.5)
                .with("y", y(angles.high50().degrees()))
                .with("width", "5")
                .with("height", y(angles.low50().degrees()) - y(angles.high50().degrees()))
                .with("fill", "none")
                .with("stroke", Ink.QUIET);
        rule(x - 4, y(angles.middle().degrees()), x + 4, y(angles.middle().degrees()), Ink.INK);
        write(x, y(angles.high90().degrees()) - 4, String.valueOf(index + 1), Ink.INK)
                .with("text-anchor", "middle")
                .with("font-weight", "600");
        svg.svg("line")
                .with("x1", right())
                .with("y1", y(angles.middle().degrees()))
                .with("x2", x - 5)
                .with("y2", y(angles.middle().degrees()))
                .with("stroke", Ink.RULE)
                .with("stroke-width", "0.8");
    }

    private double right() {
        return WIDTH - NAMES - options.size() * SPREAD;
    }

    private double x(LocalDate day) {
        double part = (double) ChronoUnit.DAYS.between(from, day) / Math.max(1, ChronoUnit.DAYS.between(from, to));
        return LEFT + part * (right() - LEFT);
    }

    private double y(double degrees) {
        double shown = Math.clamp(degrees, low, high);
        return BOTTOM - (shown - low) / Math.max(1, high - low) * (BOTTOM - TOP);
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
}
