package org.espalier.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * Whether the limbs lie on the film as their sides say. Lateral points away from the other limb however the film is
 * turned; and on a film that faces the reader, the child's right lies on the reader's left.
 */
final class LayoutCautions {

    private LayoutCautions() {}

    static List<Caution> of(Map<Side, LimbLandmarks> limbs) {
        var cautions = new ArrayList<Caution>();
        limbs.forEach((side, limb) -> {
            var across = limbs.entrySet().stream()
                    .filter(other -> other.getKey() == side.opposite())
                    .flatMap(other -> across(limb, other.getValue()).stream())
                    .findFirst();
            if (across.isPresent() && across.get() > 0) {
                cautions.add(Caution.ofLimb(Caution.Kind.LATERAL_INWARD, side));
            } else if (liesAsOtherSide(side, limb)) {
                cautions.add(Caution.ofLimb(Caution.Kind.AS_OTHER_SIDE, side));
            }
        });
        return cautions;
    }

    /** Positive when the limb's lateral points towards the other limb; empty until both have enough landmarks. */
    private static Optional<Double> across(LimbLandmarks limb, LimbLandmarks other) {
        if (lines(limb).findAny().isEmpty() || other.points().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of((middle(other).x() - middle(limb).x()) * lateralX(limb)
                + (middle(other).y() - middle(limb).y()) * lateralY(limb));
    }

    private static boolean liesAsOtherSide(Side side, LimbLandmarks limb) {
        double lateral = lateralX(limb);
        return side == Side.RIGHT ? lateral > 0 : lateral < 0;
    }

    private static double lateralX(LimbLandmarks limb) {
        return lines(limb)
                .mapToDouble(line -> line.lateral().x() - line.medial().x())
                .sum();
    }

    private static double lateralY(LimbLandmarks limb) {
        return lines(limb)
                .mapToDouble(line -> line.lateral().y() - line.medial().y())
                .sum();
    }

    private static PixelPoint middle(LimbLandmarks limb) {
        var points = limb.points().values();
        return new PixelPoint(
                points.stream().mapToDouble(PixelPoint::x).average().orElseThrow(),
                points.stream().mapToDouble(PixelPoint::y).average().orElseThrow());
    }

    private static Stream<SetLine> lines(LimbLandmarks limb) {
        return Arrays.stream(JointLine.values())
                .filter(line -> limb.point(line.medial()).isPresent()
                        && limb.point(line.lateral()).isPresent())
                .map(line -> new SetLine(
                        limb.point(line.medial()).get(),
                        limb.point(line.lateral()).get()));
    }

    private record SetLine(PixelPoint medial, PixelPoint lateral) {}
}
