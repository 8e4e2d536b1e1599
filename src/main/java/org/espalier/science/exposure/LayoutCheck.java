package org.espalier.science.exposure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * Whether the limbs lie on a film as they should. Lateral points away from the other limb however the film is turned;
 * on a film from the front that is seen upright, the child's right lies on the viewer's left. Side and ends by name are
 * held against where the points lie; nothing is changed.
 */
public final class LayoutCheck {

    /** What was found. */
    public enum Kind {
        /** Right and left limb lie the other way round: sides exchanged, or the film mirrored. */
        SIDES_SWAPPED_OR_MIRRORED,
        /** Lateral points towards the other limb: medial and lateral exchanged on this limb. */
        MEDIAL_LATERAL_SWAPPED,
        /** A single limb looks like the other side: film mirrored, wrong side, or medial and lateral exchanged. */
        LOOKS_LIKE_OTHER_SIDE
    }

    /**
     * A finding.
     *
     * @param kind what
     * @param side on which limb; empty when on both
     */
    public record Finding(Kind kind, Optional<Side> side) {}

    private LayoutCheck() {}

    /**
     * What does not fit; nothing where too few points are set.
     *
     * @param limbs the landmarks of each limb on the film, as stored: pixels with x to the viewer's right
     */
    public static List<Finding> of(Map<Side, LimbLandmarks> limbs) {
        Optional<LimbLandmarks> right = limb(limbs, Side.RIGHT);
        Optional<LimbLandmarks> left = limb(limbs, Side.LEFT);
        if (right.isPresent() && left.isPresent()) {
            return ofBoth(right.get(), left.get());
        }
        return Stream.concat(
                        right.stream().flatMap(limb -> ofOne(limb, Side.RIGHT)),
                        left.stream().flatMap(limb -> ofOne(limb, Side.LEFT)))
                .toList();
    }

    private static List<Finding> ofBoth(LimbLandmarks right, LimbLandmarks left) {
        List<Finding> findings = new ArrayList<>();
        if (middle(left, PixelPoint::x) < middle(right, PixelPoint::x)) {
            findings.add(new Finding(Kind.SIDES_SWAPPED_OR_MIRRORED, Optional.empty()));
        }
        if (pointsTowards(right, left)) {
            findings.add(new Finding(Kind.MEDIAL_LATERAL_SWAPPED, Optional.of(Side.RIGHT)));
        }
        if (pointsTowards(left, right)) {
            findings.add(new Finding(Kind.MEDIAL_LATERAL_SWAPPED, Optional.of(Side.LEFT)));
        }
        return List.copyOf(findings);
    }

    private static Stream<Finding> ofOne(LimbLandmarks limb, Side side) {
        double outwards = side == Side.RIGHT ? -1 : 1;
        return lateral(limb, PixelPoint::x) * outwards < 0
                ? Stream.of(new Finding(Kind.LOOKS_LIKE_OTHER_SIDE, Optional.of(side)))
                : Stream.empty();
    }

    /** A limb with at least one point. */
    private static Optional<LimbLandmarks> limb(Map<Side, LimbLandmarks> limbs, Side side) {
        return Optional.ofNullable(limbs.get(side))
                .filter(limb -> !limb.points().isEmpty());
    }

    /** Whether the limb's lateral points towards the other limb; not before it has a line. */
    private static boolean pointsTowards(LimbLandmarks limb, LimbLandmarks other) {
        double across = (middle(other, PixelPoint::x) - middle(limb, PixelPoint::x)) * lateral(limb, PixelPoint::x)
                + (middle(other, PixelPoint::y) - middle(limb, PixelPoint::y)) * lateral(limb, PixelPoint::y);
        return across > 0;
    }

    private static double middle(LimbLandmarks limb, ToDoubleFunction<PixelPoint> axis) {
        return limb.points().values().stream().mapToDouble(axis).average().orElse(0);
    }

    /** How far all lines together run from medial to lateral along an axis of the film; 0 without lines. */
    private static double lateral(LimbLandmarks limb, ToDoubleFunction<PixelPoint> axis) {
        return Arrays.stream(JointLine.values())
                .flatMap(line -> limb
                        .point(line.medial())
                        .flatMap(medial -> limb.point(line.lateral())
                                .map(end -> axis.applyAsDouble(end) - axis.applyAsDouble(medial)))
                        .stream())
                .mapToDouble(Double::doubleValue)
                .sum();
    }
}
