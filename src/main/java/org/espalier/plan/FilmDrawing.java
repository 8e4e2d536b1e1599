package org.espalier.plan;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.kit.paper.Ink;
import org.espalier.kit.paper.Markup;
import org.espalier.kit.paper.PaperPrinter;
import org.espalier.plan.CutAnswer.Line;
import org.espalier.plan.CutAnswer.Point;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;

/**
 * A film before a cut and after it, side by side and to scale, with the axes: dashed before, drawn out after, the
 * bearing line thin. Where there is no picture the axes stand alone.
 */
final class FilmDrawing {

    /** The scales a drawing may have, the largest that fits first. */
    private static final double[] RATIOS = {1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10};

    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final double WIDTH = 500;
    private static final double PANEL = 215;
    private static final double MOST_HEIGHT = 470;
    private static final double TOP = 20;
    private static final double BAR_MM = 50;
    private static final String NIGHT = "#141412";

    private final CutAnswer answer;
    private final FilmBox box;
    private final Optional<FilmPicture> picture;
    private final double across;
    private final double down;
    private final Optional<Double> ratio;

    private FilmDrawing(FilmCut cut, CutAnswer answer, FilmBox box, Optional<FilmPicture> picture) {
        this.answer = answer;
        this.box = box;
        this.picture = picture;
        var pixel = cut.limb().plane().scale();
        double mmX = pixel.map(PixelScale::millimetresPerPixelX).orElse(1.0);
        double mmY = pixel.map(PixelScale::millimetresPerPixelY).orElse(1.0);
        double fits = Math.min(PANEL / (box.width() * mmX), MOST_HEIGHT / (box.height() * mmY));
        ratio = cut.limb().inMillimetres() ? ratio(fits) : Optional.empty();
        double points = ratio.map(one -> POINTS_PER_MM / one).orElse(fits);
        across = mmX * points;
        down = mmY * points;
    }

    private static Optional<Double> ratio(double fits) {
        for (double ratio : RATIOS) {
            if (POINTS_PER_MM / ratio <= fits) {
                return Optional.of(ratio);
            }
        }
        return Optional.empty();
    }

    /** The largest of the scales at which a film's part fits on paper, as in 1 : n; empty without millimetres. */
    static Optional<Double> ratio(FilmCut cut, CutAnswer answer) {
        return new FilmDrawing(cut, answer, FilmBox.of(answer), Optional.empty()).ratio;
    }

    static void draw(FilmCut cut, CutAnswer answer, Optional<FilmPicture> picture, Markup parent) {
        var drawing = new FilmDrawing(cut, answer, FilmBox.of(answer), picture);
        double height = TOP + drawing.height() + 6;
        var svg = parent.svg("svg")
                .with("width", WIDTH)
                .with("height", height)
                .with("viewBox", String.format(Locale.ROOT, "0 0 %.0f %.2f", WIDTH, height))
                .with("font-family", PaperPrinter.FACE + ", sans-serif")
                .with("font-size", "10");
        drawing.panel(svg, 0, "before", "plan.cut.before", cut.limb().side());
        drawing.panel(svg, PANEL + 12, "after", "plan.cut.after", cut.limb().side());
        drawing.bar(svg, 2 * PANEL + 24);
    }

    private double width() {
        return across * box.width();
    }

    private double height() {
        return down * box.height();
    }

    private void panel(Markup svg, double left, String kind, String title, Side side) {
        text(svg, left, 12, Texts.text(title)).with("font-weight", "600");
        var panel = svg.svg("g").with("transform", String.format(Locale.ROOT, "translate(%.2f %.2f)", left, TOP));
        var frame = panel.svg("clipPath").with("id", "frame-" + kind).svg("rect");
        sized(frame);
        sized(panel.svg("rect"))
                .with("fill", background())
                .with("stroke", Ink.INK)
                .with("stroke-width", "0.5");
        var inside = panel.svg("g").with("clip-path", "url(#frame-" + kind + ")");
        picture.ifPresent(film -> film(inside, film, kind.equals("after")));
        lines(inside, kind);
        if (picture.isPresent()) {
            panel.svg("rect")
                    .with("x", "0")
                    .with("y", "0")
                    .with("width", "24")
                    .with("height", "28")
                    .with("fill", NIGHT);
        }
        text(panel, 6, 22, Texts.text("plan.letter." + side.name()))
                .with("font-size", "20")
                .with("font-weight", "600")
                .with("fill", foreground());
    }

    private Markup sized(Markup rectangle) {
        return rectangle.with("width", width()).with("height", height());
    }

    private void film(Markup inside, FilmPicture film, boolean isAfter) {
        var onFilm = inside.svg("g")
                .with(
                        "transform",
                        String.format(
                                Locale.ROOT,
                                "matrix(%.8f 0 0 %.8f %.4f %.4f)",
                                across,
                                down,
                                -across * box.x(),
                                -down * box.y()));
        image(onFilm, film);
        if (isAfter) {
            var corners = points(answer.part().stream(), "%.3f,%.3f", 1, 1, 0, 0);
            onFilm.svg("clipPath").with("id", "below").svg("polygon").with("points", corners);
            onFilm.svg("polygon").with("points", corners).with("fill", NIGHT);
            var matrix = answer.matrix().stream()
                    .map(number -> String.format(Locale.ROOT, "%.10f", number))
                    .collect(Collectors.joining(" "));
            image(
                    onFilm.svg("g")
                            .with("transform", "matrix(" + matrix + ")")
                            .svg("g")
                            .with("clip-path", "url(#below)"),
                    film);
        }
    }

    private static void image(Markup parent, FilmPicture film) {
        parent.svg("image")
                .with("x", film.x())
                .with("y", film.y())
                .with("width", film.width())
                .with("height", film.height())
                .with("preserveAspectRatio", "none")
                .picture(film.address());
    }

    private void lines(Markup inside, String kind) {
        boolean isAfter = kind.equals("after");
        answer.lines().stream()
                .filter(line -> isAfter || !line.kind().endsWith("after"))
                .filter(line ->
                        !(isAfter && (line.kind().equals("bend") || line.kind().equals("level"))))
                .forEach(line -> polyline(inside, line));
        if (!isAfter && answer.centre() != null) {
            inside.svg("circle")
                    .with("cx", across * (answer.centre().x() - box.x()))
                    .with("cy", down * (answer.centre().y() - box.y()))
                    .with("r", "4")
                    .with("fill", "none")
                    .with("stroke", foreground());
        }
    }

    /** On a film with a dark edge, so that it is seen on bone and on air. */
    private void polyline(Markup inside, Line line) {
        double thickness = thickness(line.kind());
        if (picture.isPresent()) {
            stroke(inside, line, NIGHT, thickness + 1.2).with("stroke-opacity", "0.7");
        }
        stroke(inside, line, foreground(), thickness);
    }

    private Markup stroke(Markup inside, Line line, String colour, double thickness) {
        return inside.svg("polyline")
                .with("points", points(line.points().stream(), "%.2f,%.2f", across, down, box.x(), box.y()))
                .with("fill", "none")
                .with("stroke", colour)
                .with("stroke-width", thickness)
                .with("stroke-dasharray", dashes(line.kind()));
    }

    private static double thickness(String kind) {
        return switch (kind) {
            case "cut" -> 2;
            case "level" -> 2.6;
            case "before", "after" -> 1.4;
            default -> 0.7;
        };
    }

    private static String dashes(String kind) {
        return switch (kind) {
            case "before", "bearing-before" -> "4 3";
            case "bend" -> "1.5 2";
            default -> "none";
        };
    }

    private static String points(
            Stream<Point> points, String form, double across, double down, double left, double top) {
        return points.map(point ->
                        String.format(Locale.ROOT, form, across * (point.x() - left), down * (point.y() - top)))
                .collect(Collectors.joining(" "));
    }

    private void bar(Markup svg, double x) {
        ratio.ifPresent(one -> {
            double length = BAR_MM * POINTS_PER_MM / one;
            svg.svg("line")
                    .with("x1", x)
                    .with("y1", TOP)
                    .with("x2", x)
                    .with("y2", TOP + length)
                    .with("stroke", Ink.INK)
                    .with("stroke-width", "2");
            text(svg, x + 5, TOP + length / 2 + 3, Texts.text("plan.draw.bar", BAR_MM));
            text(svg, x, 12, Texts.text("plan.draw.ratio", one)).with("font-weight", "600");
        });
    }

    private String foreground() {
        return picture.isPresent() ? "#e9dcae" : Ink.INK;
    }

    private String background() {
        return picture.isPresent() ? NIGHT : "none";
    }

    private static Markup text(Markup parent, double x, double y, String text) {
        return parent.svg("text")
                .with("x", x)
                .with("y", y)
                .with("fill", Ink.INK)
                .text(text);
    }
}
