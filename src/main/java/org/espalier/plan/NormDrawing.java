package org.espalier.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.alignment.Norm;
import org.espalier.science.alignment.NormCourse;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Side;
import org.espalier.science.statistics.Interval;

/**
 * A study's mean by age, two standard deviations or its printed range as a band, the readings of one limb on it: varus
 * up.
 *
 * @param points what the study says, month by month; where it says nothing there is none
 */
record NormDrawing(
        NormCourse course, List<Point> points, List<NormPart.Seen> seen, Side side, Function<LocalDate, Age> age) {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 280;
    private static final double LEFT = 70;
    private static final double RIGHT = 625;
    private static final double TOP = 16;
    private static final double BOTTOM = 240;
    private static final int MONTHS_OF_YEAR = 12;

    /** So far beyond the last reading the course is shown. */
    private static final double YEARS_AHEAD = 4;

    /** What the study says of a month of age. */
    record Point(int month, Norm norm) {

        /** Two standard deviations either way, else the printed range. */
        Interval band() {
            if (norm.z(0).isPresent()) {
                double mean = norm.mean().orElseThrow();
                double reach = 2 * norm.standardDeviation().orElseThrow();
                return new Interval(mean - reach, mean + reach);
            }
            return norm.range().orElseGet(() -> {
                double mean = norm.mean().orElseThrow();
                return new Interval(mean, mean);
            });
        }
    }

    void draw(Markup parent) {
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", HEIGHT)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.0f", WIDTH, HEIGHT))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "12");
        new Page(svg, scale()).draw();
    }

    /** What the sheet spans: years from birth, and the value from the valgus end to the varus end. */
    private record Scale(double years, double low, double high, double step) {}

    private Scale scale() {
        double printed = points.isEmpty() ? 1 : (points.getLast().month() + 1.0) / MONTHS_OF_YEAR;
        double read = seen.isEmpty() ? printed : age.apply(seen.getLast().on()).decimalYears();
        double years = Math.ceil(Math.max(read, Math.min(printed, read + YEARS_AHEAD)));
        var values = Stream.concat(
                        points.stream()
                                .filter(point -> point.month() < years * MONTHS_OF_YEAR)
                                .flatMap(point -> Stream.of(
                                        point.band().low(), point.band().high())),
                        seen.stream().map(NormPart.Seen::value))
                .map(this::up)
                .toList();
        double least = values.stream().mapToDouble(Double::doubleValue).min().orElse(-1);
        double most = values.stream().mapToDouble(Double::doubleValue).max().orElse(1);
        double step = course.quantity() == NormQuantity.KNEE_GAP ? 20 : most - least > 30 ? 10 : 5;
        double from = step * Math.floor(least / step);
        return new Scale(years, from, Math.max(from + step, step * Math.ceil(most / step)), step);
    }

    /** A value so that varus points up. */
    private double up(double value) {
        return NormText.isVarusPositive(course.quantity()) ? value : -value;
    }

    private final class Page {

        private final Markup svg;
        private final Scale scale;

        Page(Markup svg, Scale scale) {
            this.svg = svg;
            this.scale = scale;
        }

        void draw() {
            runs().forEach(this::band);
            axes();
            runs().forEach(this::mean);
            limb();
        }

        private void axes() {
            for (double at = scale.low(); at <= scale.high() + 1e-9; at += scale.step()) {
                line(LEFT, y(at), RIGHT, y(at), Ink.RULE, "0.8");
                double value = up(at);
                boolean signed = course.quantity() != NormQuantity.MLDFA && course.quantity() != NormQuantity.MMPTA;
                write(LEFT - 6, y(at) + 4, axis(signed ? Math.abs(value) : value))
                        .with("text-anchor", "end");
            }
            write(2, TOP + 4, Texts.text("plan.chart.varus"));
            write(2, BOTTOM + 4, Texts.text("plan.chart.valgus"));
            long every = scale.years() > 9 ? 2 : 1;
            for (long year = 0; year <= scale.years(); year += every) {
                double x = x(year * (double) MONTHS_OF_YEAR);
                line(x, BOTTOM, x, BOTTOM + 5, Ink.QUIET, "1");
                write(x, BOTTOM + 18, Texts.text("plan.norm.axis.years", year)).with("text-anchor", "middle");
            }
            write((LEFT + RIGHT) / 2, BOTTOM + 34, Texts.text("plan.norm.axis.age"))
                    .with("text-anchor", "middle");
        }

        private String axis(double value) {
            return Texts.text(
                    course.quantity() == NormQuantity.KNEE_GAP ? "plan.norm.axis.mm" : "plan.chart.axis", value);
        }

        /** Months that follow each other without a gap. */
        private List<List<Point>> runs() {
            var runs = new ArrayList<List<Point>>();
            for (var point : shown()) {
                if (runs.isEmpty() || runs.getLast().getLast().month() + 1 != point.month()) {
                    runs.add(new ArrayList<>());
                }
                runs.getLast().add(point);
            }
            return runs;
        }

        private List<Point> shown() {
            return points.stream()
                    .filter(point -> point.month() < scale.years() * MONTHS_OF_YEAR)
                    .toList();
        }

        private void band(List<Point> run) {
            var outline = Stream.concat(
                            edge(run, point -> point.band().low()),
                            edge(run, point -> point.band().high()).toList().reversed().stream())
                    .collect(Collectors.joining(" "));
            svg.svg("polygon").with("points", outline).with("fill", Ink.PALE);
        }

        private void mean(List<Point> run) {
            var told = run.stream()
                    .filter(point -> point.norm().mean().isPresent())
                    .toList();
            if (!told.isEmpty()) {
                svg.svg("polyline")
                        .with(
                                "points",
                                edge(told, point -> point.norm().mean().orElseThrow())
                                        .collect(Collectors.joining(" ")))
                        .with("fill", "none")
                        .with("stroke", Ink.INK)
                        .with("stroke-width", "1.8");
            }
        }

        /** From the beginning of the first month to the end of the last. */
        private Stream<String> edge(List<Point> run, ToDoubleFunction<Point> value) {
            var last = run.getLast();
            return Stream.concat(
                    run.stream().map(point -> at(point.month(), value.applyAsDouble(point))),
                    Stream.of(at(last.month() + 1, value.applyAsDouble(last))));
        }

        private String at(double month, double value) {
            return String.format(Locale.ROOT, "%.1f,%.1f", x(month), y(up(value)));
        }

        private void limb() {
            var mark = new LimbMark(side);
            mark.line(
                    svg,
                    seen.stream()
                            .map(one -> String.format(Locale.ROOT, "%.1f,%.1f", x(one), y(up(one.value()))))
                            .collect(Collectors.joining(" ")));
            seen.forEach(one -> mark.at(svg, x(one), y(up(one.value()))));
            seen.stream().reduce((earlier, later) -> later).ifPresent(last -> write(
                            x(last) + 8, y(up(last.value())) + 4, Texts.text("plan.norm." + side))
                    .with("fill", mark.colour())
                    .with("font-weight", "600"));
        }

        private double x(NormPart.Seen one) {
            return x(age.apply(one.on()).decimalYears() * MONTHS_OF_YEAR);
        }

        private double x(double months) {
            return LEFT + months / (MONTHS_OF_YEAR * scale.years()) * (RIGHT - LEFT);
        }

        private double y(double varus) {
            return BOTTOM - (varus - scale.low()) / (scale.high() - scale.low()) * (BOTTOM - TOP);
        }

        private void line(double x1, double y1, double x2, double y2, String colour, String width) {
            svg.svg("line")
                    .with("x1", x1)
                    .with("y1", y1)
                    .with("x2", x2)
                    .with("y2", y2)
                    .with("stroke", colour)
                    .with("stroke-width", width);
        }

        private Markup write(double x, double y, String text) {
            return svg.svg("text")
                    .with("x", x)
                    .with("y", y)
                    .with("fill", Ink.QUIET)
                    .text(text);
        }
    }
}
