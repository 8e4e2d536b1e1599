package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.espalier.plan.CutAnswer.Line;
import org.espalier.plan.CutAnswer.Point;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.planning.CutKind;
import org.espalier.science.planning.LimbPoint;
import org.espalier.science.quantity.PixelPoint;

/** What is drawn of a cut on its film. */
final class CutDrawing {

    private static final double BESIDE_THE_LIMB = 0.18;
    private static final double FAR_BELOW = 20_000;
    private static final double PAST_THE_CENTRE = 0.12;
    private static final double MOST_ERROR = 3;

    private final FilmCut cut;

    private CutDrawing(FilmCut cut) {
        this.cut = cut;
    }

    static CutAnswer answer(FilmCut cut, long seq) {
        var drawing = new CutDrawing(cut);
        return new CutAnswer(
                seq,
                cut.bone().name(),
                drawing.part(),
                drawing.matrix(),
                drawing.lines(),
                drawing.centre().map(Point::of).orElse(null),
                CutWords.numbers(cut),
                CutWords.notes(cut));
    }

    /** Below the cut, as far to either side as the limb reaches, so that the other limb stays. */
    private List<Point> part() {
        double[] across = sorted(PixelPoint::x);
        double[] down = sorted(PixelPoint::y);
        double beside = BESIDE_THE_LIMB * (down[down.length - 1] - down[0]);
        double left = across[0] - beside;
        double right = across[across.length - 1] + beside;
        double bottom = down[down.length - 1] + FAR_BELOW;
        var line = cut.moved().line(cut.limb().plane());
        var corners = new ArrayList<Point>();
        corners.add(new Point(left, beside(line.getFirst(), left)));
        line.stream().filter(_ -> cut.kind() == CutKind.ROUND).map(Point::of).forEach(corners::add);
        corners.add(new Point(right, beside(line.getLast(), right)));
        corners.add(new Point(right, bottom));
        corners.add(new Point(left, bottom));
        return corners;
    }

    private double[] sorted(ToDoubleFunction<PixelPoint> coordinate) {
        return cut.landmarks().points().values().stream()
                .mapToDouble(coordinate)
                .sorted()
                .toArray();
    }

    /** A straight cut goes on as it runs; beside a round one the film is cut level. */
    private double beside(PixelPoint end, double x) {
        if (cut.kind() == CutKind.ROUND) {
            return end.y();
        }
        double slope =
                (cut.to().y() - cut.from().y()) / (cut.to().x() - cut.from().x());
        return end.y() + slope * (x - end.x());
    }

    private List<Double> matrix() {
        var origin = moved(0, 0);
        var right = moved(1, 0);
        var below = moved(0, 1);
        return List.of(
                right.x() - origin.x(),
                right.y() - origin.y(),
                below.x() - origin.x(),
                below.y() - origin.y(),
                origin.x(),
                origin.y());
    }

    private PixelPoint moved(double x, double y) {
        return cut.moved().turned(new PixelPoint(x, y), cut.limb().plane());
    }

    private List<Line> lines() {
        var lines = new ArrayList<Line>();
        lines.addAll(lines(cut.landmarks(), "before"));
        lines.addAll(lines(cut.after(), "after"));
        lines.add(line(
                "cut",
                cut.moved().line(cut.limb().plane()).stream().map(Point::of).toList()));
        cut.bend().ifPresent(bend -> bend.centre().ifPresent(centre -> lines.addAll(bend(bend, centre))));
        return lines;
    }

    private static List<Line> lines(LimbLandmarks limb, String kind) {
        var hip = limb.point(Landmark.HIP_CENTRE);
        var knee = FilmLimb.middle(limb, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL);
        var shin = FilmLimb.middle(limb, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL);
        var ankle = FilmLimb.middle(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL);
        return Stream.of(line(kind, hip, knee), line(kind, shin, ankle), line("bearing-" + kind, hip, ankle))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Line> line(String kind, Optional<PixelPoint> from, Optional<PixelPoint> to) {
        return from.flatMap(start -> to.map(end -> line(kind, List.of(Point.of(start), Point.of(end)))));
    }

    private static Line line(String kind, List<Point> points) {
        return new Line(kind, points);
    }

    /** Both axes a little past their crossing, and how far its level may be off. */
    private List<Line> bend(FilmBend bend, LimbPoint centre) {
        double past = PAST_THE_CENTRE
                * bend.proximal().upper().distanceTo(bend.distal().lower());
        double error = Math.min(past * MOST_ERROR, bend.levelError(centre).millimetres());
        return List.of(
                line("bend", points(bend.proximal().upper(), along(bend.proximal(), centre, past))),
                line(
                        "bend",
                        points(
                                along(bend.distal(), centre, -past),
                                bend.distal().lower())),
                line("level", points(along(bend.proximal(), centre, -error), along(bend.proximal(), centre, error))));
    }

    private List<Point> points(LimbPoint from, LimbPoint to) {
        return List.of(Point.of(cut.limb().pixel(from)), Point.of(cut.limb().pixel(to)));
    }

    /** @param down how far from the point, towards the foot */
    private static LimbPoint along(BoneLine axis, LimbPoint from, double down) {
        double length = axis.upper().distanceTo(axis.lower());
        double x = (axis.lower().lateral() - axis.upper().lateral()) / length;
        double y = (axis.lower().proximal() - axis.upper().proximal()) / length;
        return new LimbPoint(from.lateral() + down * x, from.proximal() + down * y);
    }

    private Optional<PixelPoint> centre() {
        return cut.bend().flatMap(FilmBend::centre).map(cut.limb()::pixel);
    }
}
