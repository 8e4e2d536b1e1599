package org.espalier.science.exposure;

import static org.espalier.science.alignment.Landmark.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/**
 * Whether the limbs lie on a film taken from the front as they should: the child's right on the viewer's left, medial
 * between the limbs. Side and ends by name are held against where the points lie; nothing is changed.
 */
public final class LayoutCheck {

    private record Line(Landmark medial, Landmark lateral) {}

    private static final List<Line> LINES = List.of(
            new Line(CONDYLE_MEDIAL, CONDYLE_LATERAL),
            new Line(PLATEAU_MEDIAL, PLATEAU_LATERAL),
            new Line(PLAFOND_MEDIAL, PLAFOND_LATERAL),
            new Line(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL),
            new Line(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL));

    /** What was found. */
    public enum Kind {
        /** Right and left limb lie the other way round: sides exchanged, or the film mirrored. */
        SIDES_SWAPPED_OR_MIRRORED,
        /** All medial ends lie away from the other limb: medial and lateral exchanged on this limb. */
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
        double leftward = Math.signum(middle(left) - middle(right));
        List<Finding> findings = new ArrayList<>();
        if (leftward < 0) {
            findings.add(new Finding(Kind.SIDES_SWAPPED_OR_MIRRORED, Optional.empty()));
        }
        if (lateralSense(right).orElse(0) * leftward > 0) {
            findings.add(new Finding(Kind.MEDIAL_LATERAL_SWAPPED, Optional.of(Side.RIGHT)));
        }
        if (lateralSense(left).orElse(0) * leftward < 0) {
            findings.add(new Finding(Kind.MEDIAL_LATERAL_SWAPPED, Optional.of(Side.LEFT)));
        }
        return List.copyOf(findings);
    }

    private static Stream<Finding> ofOne(LimbLandmarks limb, Side side) {
        double expected = side == Side.RIGHT ? -1 : 1;
        return lateralSense(limb).orElse(0) * expected < 0
                ? Stream.of(new Finding(Kind.LOOKS_LIKE_OTHER_SIDE, Optional.of(side)))
                : Stream.empty();
    }

    /** A limb with at least one point. */
    private static Optional<LimbLandmarks> limb(Map<Side, LimbLandmarks> limbs, Side side) {
        return Optional.ofNullable(limbs.get(side))
                .filter(limb -> !limb.points().isEmpty());
    }

    private static double middle(LimbLandmarks limb) {
        return limb.points().values().stream()
                .mapToDouble(PixelPoint::x)
                .average()
                .orElse(0);
    }

    /** Above 0 when most lines run to the viewer's right from medial to lateral; empty without lines. */
    private static OptionalDouble lateralSense(LimbLandmarks limb) {
        return LINES.stream()
                .flatMap(line -> limb
                        .point(line.medial())
                        .flatMap(medial -> limb.point(line.lateral()).map(lateral -> lateral.x() - medial.x()))
                        .stream())
                .mapToDouble(Math::signum)
                .average();
    }
}
