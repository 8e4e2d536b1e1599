package org.espalier.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.plan.CutAnswer.Line;
import org.espalier.plan.CutAnswer.Point;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.planning.BoneLine;
import org.espalier.science.quantity.PixelPoint;

/** What is drawn of a cut on its film. */
final class CutDrawing {

    private static final double BESIDE_THE_LIMB = 0.18;
    private static final double FAR_BELOW = 20_000;

    private final FilmCut cut;

    private CutDrawing(FilmCut cut) {
        this.cut = cut;
    }

    static CutAnswer answer(FilmCut cut, long seq) {
        var drawing = new CutDrawing(cut);
        return new CutAnswer(
                seq,
                drawing.part(),
                drawing.matrix(),
                drawing.lines(),
                drawing.centre().map(Point::of).orElse(null),
                CutWords.numbers(cut),
                CutWords.notes(cut));
    }

    /** Below the cut, as far to either side as the limb reaches, so that the other limb stays. */
    private List<Point> part() {
        double[] across = cut.landmarks().points().values().stream()
                .mapToDouble(PixelPoint::x)
                .sorted()
                .toArray();
        double[] down = cut.landmarks().points().values().stream()
                .mapToDouble(PixelPoint::y)
                .sorted()
                .toArray();
        double beside = BESIDE_THE_LIMB * (down[down.length - 1] - down[0]);
        double left = across[0] - beside;
        double right = across[across.length - 1] + beside;
        double bottom = down[down.length - 1] + FAR_BELOW;
        return List.of(
                new Point(left, onCut(left)),
                new Point(right, onCut(right)),
                new Point(right, bottom),
                new Point(left, bottom));
    }

    private double onCut(double x) {
        double slope =
                (cut.to().y() - cut.from().y()) / (cut.to().x() - cut.from().x());
        return cut.from().y() + slope * (x - cut.from().x());
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
        return cut.moved().turned(new PixelPoint(x, y), cut.plane());
    }

    private List<Line> lines() {
        var lines = new ArrayList<Line>();
        lines.addAll(lines(cut.landmarks(), "before"));
        lines.addAll(lines(cut.after(), "after"));
        return lines;
    }

    private static List<Line> lines(LimbLandmarks limb, String kind) {
        var hip = limb.point(Landmark.HIP_CENTRE);
        var knee = FilmCut.middle(limb, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL);
        var shin = FilmCut.middle(limb, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL);
        var ankle = FilmCut.middle(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL);
        return Stream.of(line(kind, hip, knee), line(kind, shin, ankle), line("bearing-" + kind, hip, ankle))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Line> line(String kind, Optional<PixelPoint> from, Optional<PixelPoint> to) {
        return from.flatMap(start -> to.map(end -> new Line(kind, List.of(Point.of(start), Point.of(end)))));
    }

    private Optional<PixelPoint> centre() {
        return cut.tibia()
                .filter(tibia -> tibia.angle().abs().compareTo(BoneLine.LEAST_FOR_LEVEL) >= 0)
                .flatMap(tibia -> tibia.proximal().crossing(tibia.distal()))
                .map(cut::pixel);
    }
}
