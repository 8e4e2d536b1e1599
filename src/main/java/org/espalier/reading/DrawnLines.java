package org.espalier.reading;

import static org.espalier.science.alignment.Landmark.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.reading.MeasureAnswer.Line;
import org.espalier.reading.MeasureAnswer.Point;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** The lines the numbers are measured between, drawn on the film as soon as their landmarks are there. */
final class DrawnLines {

    private DrawnLines() {}

    static List<Line> of(Map<Side, LimbLandmarks> limbs) {
        var lines = new ArrayList<Line>();
        limbs.forEach((side, limb) -> lines.addAll(ofLimb(side, limb)));
        return lines;
    }

    private static List<Line> ofLimb(Side side, LimbLandmarks limb) {
        var hip = limb.point(HIP_CENTRE);
        var knee = middle(limb, CONDYLE_MEDIAL, CONDYLE_LATERAL);
        var shin = middle(limb, PLATEAU_MEDIAL, PLATEAU_LATERAL);
        var ankle = middle(limb, PLAFOND_MEDIAL, PLAFOND_LATERAL);
        return Stream.of(
                        line(side, "axis", hip, knee),
                        line(side, "axis", shin, ankle),
                        line(side, "help", hip, ankle),
                        between(side, "shaft", limb, FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL),
                        between(side, "shaft", limb, TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL),
                        across(side, "help", limb, JointLine.TROCHANTER),
                        across(side, "joint", limb, JointLine.CONDYLES),
                        across(side, "joint", limb, JointLine.PLATEAU),
                        across(side, "joint", limb, JointLine.PLAFOND),
                        across(side, "physis", limb, JointLine.FEMUR_PHYSIS),
                        across(side, "physis", limb, JointLine.TIBIA_PHYSIS),
                        across(side, "help", limb, JointLine.FEMUR_BEAKS),
                        across(side, "help", limb, JointLine.TIBIA_BEAKS))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Line> across(Side side, String kind, LimbLandmarks limb, JointLine line) {
        return between(side, kind, limb, line.medial(), line.lateral());
    }

    private static Optional<Line> between(Side side, String kind, LimbLandmarks limb, Landmark from, Landmark to) {
        return line(side, kind, limb.point(from), limb.point(to));
    }

    private static Optional<Line> line(Side side, String kind, Optional<PixelPoint> from, Optional<PixelPoint> to) {
        return from.flatMap(
                start -> to.map(end -> new Line(side, kind, List.of(Point.of(start), Point.of(end)), null)));
    }

    private static Optional<PixelPoint> middle(LimbLandmarks limb, Landmark one, Landmark other) {
        return limb.point(one)
                .flatMap(a -> limb.point(other).map(b -> new PixelPoint((a.x() + b.x()) / 2, (a.y() + b.y()) / 2)));
    }
}
