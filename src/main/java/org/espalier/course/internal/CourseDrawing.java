package org.espalier.course.internal;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.course.internal.Axes.Time;
import org.espalier.course.internal.Axes.Values;
import org.espalier.kit.CourseModel;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** The lanes of one limb over time, drawn from the model that the screen draws too. */
final class CourseDrawing {

    static final double WIDTH = 523;

    private static final double GUTTER = 92;
    private static final double LAST_VALUE = 62;
    private static final double AGE_AXIS = 16;
    private static final double DATE_AXIS = 16;
    private static final double LANE = 62;
    private static final double BETWEEN = 9;
    private static final double ROW = 13;

    private final CourseModel model;
    private final Side side;
    private final List<CourseModel.Quantity> lanes;
    private final List<CourseModel.Row> rows;
    private final Time time;
    private final Markup svg;

    private CourseDrawing(CourseModel model, Side side, List<String> quantities, Markup parent) {
        this.model = model;
        this.side = side;
        lanes = model.quantities().stream()
                .filter(quantity -> quantities.contains(quantity.id()))
                .toList();
        rows = model.rows().stream()
                .filter(row -> row.side() == null || row.side() == side)
                .toList();
        time = new Time(model, GUTTER, WIDTH - LAST_VALUE);
        double height = bottom() + DATE_AXIS + rows.size() * ROW + 4;
        svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.1f %.1f", WIDTH, height))
                .with("font-family", PaperPrinter.FACE)
                .with("font-size", "8");
    }

    /** Draws the lanes of the quantities named into a page. */
    static void draw(CourseModel model, Side side, List<String> quantities, Markup parent) {
        var drawing = new CourseDrawing(model, side, quantities, parent);
        for (int i = 0; i < drawing.lanes.size(); i++) {
            double top = AGE_AXIS + i * (LANE + BETWEEN);
            drawing.lane(new Values(drawing.lanes.get(i), top, top + LANE));
        }
        drawing.timeAxes();
        for (int i = 0; i < drawing.rows.size(); i++) {
            drawing.row(drawing.rows.get(i), drawing.bottom() + DATE_AXIS + i * ROW + ROW / 2);
        }
    }

    private double bottom() {
        return AGE_AXIS + lanes.size() * LANE + Math.max(0, lanes.size() - 1) * BETWEEN;
    }

    private void lane(Values values) {
        var quantity = values.quantity();
        svg.svg("rect")
                .with("x", time.left())
                .with("y", values.top())
                .with("width", time.right() - time.left())
                .with("height", LANE)
                .with("fill", "none")
                .with("stroke", Ink.RULE);
        quantity.bands().forEach(band -> band(band, values));
        values.ticks().forEach(tick -> tick(tick, values));
        write(0, values.top() + 8, "\u25b2 " + or(quantity.up(), "kit.Deformity.VARUS"), Ink.QUIET);
        write(0, values.top() + LANE / 2, quantity.label(), Ink.INK)
                .with("font-size", "9.5")
                .with("font-weight", "600");
        write(0, values.top() + LANE / 2 + 10, quantity.part(), Ink.QUIET);
        write(0, values.bottom() - 2, "\u25bc " + or(quantity.down(), "kit.Deformity.VALGUS"), Ink.QUIET);
        var tracks = model.tracks().stream()
                .filter(track -> track.quantity().equals(quantity.id()) && track.side() == side)
                .toList();
        tracks.forEach(track -> model.fans().stream()
                .filter(fan -> fan.track().equals(track.id()))
                .forEach(fan -> fan(fan, values)));
        tracks.forEach(track -> track(track, values));
    }

    /** The forecast: nine in ten pale, half darker, the middle as a thin line. */
    private void fan(CourseModel.Fan fan, Values values) {
        area(fan, values, CourseModel.Spread::low90, CourseModel.Spread::high90, 0.14);
        area(fan, values, CourseModel.Spread::low50, CourseModel.Spread::high50, 0.24);
        svg.svg("polyline")
                .with(
                        "points",
                        fan.days().stream()
                                .map(day -> point(time.x(day.date()), values.y(day.middle())))
                                .collect(Collectors.joining(" ")))
                .with("fill", "none")
                .with("stroke", Ink.of(side))
                .with("stroke-width", 0.6);
    }

    private void area(
            CourseModel.Fan fan,
            Values values,
            ToDoubleFunction<CourseModel.Spread> low,
            ToDoubleFunction<CourseModel.Spread> high,
            double opacity) {
        var under = fan.days().stream().map(day -> point(time.x(day.date()), values.y(low.applyAsDouble(day))));
        var over =
                fan.days().reversed().stream().map(day -> point(time.x(day.date()), values.y(high.applyAsDouble(day))));
        svg.svg("polygon")
                .with("points", Stream.concat(under, over).collect(Collectors.joining(" ")))
                .with("fill", Ink.of(side))
                .with("fill-opacity", opacity);
    }

    private static String or(@Nullable String word, String key) {
        return word == null ? Texts.text(key) : word;
    }

    private void band(List<CourseModel.Normal> band, Values values) {
        var low = band.stream().map(day -> point(time.x(day.date()), values.y(day.low())));
        var high = band.reversed().stream().map(day -> point(time.x(day.date()), values.y(day.high())));
        svg.svg("polygon")
                .with("points", Stream.concat(low, high).collect(Collectors.joining(" ")))
                .with("fill", Ink.BAND)
                .with("stroke", Ink.BAND_EDGE)
                .with("stroke-width", 0.5);
    }

    private void tick(double tick, Values values) {
        double y = values.y(tick);
        line(time.left(), y, time.right(), y, tick == 0 ? Ink.QUIET : Ink.PALE, 0.5);
        var number = Math.rint(tick) == 0
                ? "0"
                : String.format(Locale.ROOT, "%.0f", tick).replace('-', '\u2212');
        write(time.left() - 4, y + 2.8, number + values.quantity().unit(), Ink.QUIET)
                .with("text-anchor", "end");
    }

    private void track(CourseModel.Track track, Values values) {
        var points = track.points();
        for (int i = 0; i < points.size(); i++) {
            if (i > 0) {
                between(points.get(i - 1), points.get(i), values);
            }
            mark(points.get(i), values);
        }
        var last = points.getLast();
        double y = Math.clamp(values.y(last.value()) + 3, values.top() + 8, values.bottom() - 1);
        write(time.x(last.date()) + 7, y, last.shortText(), Ink.of(side)).with("font-weight", "600");
    }

    private void between(CourseModel.Point before, CourseModel.Point point, Values values) {
        double x1 = time.x(before.date());
        double y1 = values.y(before.value());
        double x2 = time.x(point.date());
        double y2 = values.y(point.value());
        if (point.join()) {
            var joined = line(x1, y1, x2, y2, Ink.of(side), 1.3);
            if (side == Side.LEFT) {
                joined.with("stroke-dasharray", "4 2.5");
            }
        }
        if (point.unchanged()) {
            write((x1 + x2) / 2, (y1 + y2) / 2 - 3, "\u2248", Ink.of(side)).with("text-anchor", "middle");
        }
    }

    private void mark(CourseModel.Point point, Values values) {
        double x = time.x(point.date());
        double y = values.y(point.value());
        if (point.error() > 0) {
            double high = values.y(point.value() + point.error());
            line(x, high, x, values.y(point.value() - point.error()), Ink.of(side), 0.8);
        }
        if (side == Side.RIGHT) {
            svg.svg("circle").with("cx", x).with("cy", y).with("r", 2.6).with("fill", Ink.of(side));
        } else {
            svg.svg("rect")
                    .with("x", x - 2.4)
                    .with("y", y - 2.4)
                    .with("width", 4.8)
                    .with("height", 4.8)
                    .with("fill", Ink.of(side));
        }
    }

    private void timeAxes() {
        write(0, AGE_AXIS - 6, Texts.text("course.paper.age"), Ink.QUIET);
        for (var day : time.birthdays()) {
            line(time.x(day), AGE_AXIS - 3, time.x(day), bottom(), Ink.PALE, 0.5);
            int age = day.getYear() - model.birth().getYear();
            write(time.x(day), AGE_AXIS - 6, Texts.text("course.paper.years", age), Ink.QUIET)
                    .with("text-anchor", "middle");
        }
        for (var day : time.years()) {
            line(time.x(day), bottom(), time.x(day), bottom() + 3, Ink.QUIET, 0.7);
            write(time.x(day), bottom() + 11, String.valueOf(day.getYear()), Ink.QUIET)
                    .with("text-anchor", "middle");
        }
        line(time.x(model.today()), AGE_AXIS - 3, time.x(model.today()), bottom(), Ink.BARK, 0.7)
                .with("stroke-dasharray", "1.5 2");
    }

    private void row(CourseModel.Row row, double y) {
        write(0, y + 3, row.label(), Ink.QUIET);
        for (var mark : row.marks()) {
            RowMarks.draw(svg, mark, time.x(mark.date()), time.x(end(mark)), y, row.side());
        }
    }

    private LocalDate end(CourseModel.Mark mark) {
        var to = mark.to();
        return to == null ? model.today() : to;
    }

    private Markup line(double x1, double y1, double x2, double y2, String colour, double width) {
        return svg.svg("line")
                .with("x1", x1)
                .with("y1", y1)
                .with("x2", x2)
                .with("y2", y2)
                .with("stroke", colour)
                .with("stroke-width", width);
    }

    private Markup write(double x, double y, String text, String colour) {
        return svg.svg("text").with("x", x).with("y", y).with("fill", colour).text(text);
    }

    private static String point(double x, double y) {
        return String.format(Locale.ROOT, "%.2f,%.2f", x, y);
    }
}
