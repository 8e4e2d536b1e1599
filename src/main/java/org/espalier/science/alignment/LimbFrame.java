package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PlanePoint;

/**
 * The landmarks of one limb in the plane, mirrored where needed so that the turn from lateral to distal is positive:
 * the signs of turns are then anatomical, whichever limb it is and however the film lies.
 *
 * <p>Lateral is the sum of the unit directions of all medial-to-lateral lines that are set, distal that of all
 * proximal-to-distal lines; so one line set the wrong way round is outvoted and shows as exchanged. On a film from the
 * side anterior stands in for lateral, so that the turn from anterior to distal is positive.
 */
final class LimbFrame {

    private record Line(Landmark from, Landmark to) {}

    private static final List<Line> LATERAL_LINES = List.of(
            new Line(HIP_CENTRE, TROCHANTER_TIP),
            new Line(FEMUR_BEAK_MEDIAL, FEMUR_BEAK_LATERAL),
            new Line(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL),
            new Line(CONDYLE_MEDIAL, CONDYLE_LATERAL),
            new Line(PLATEAU_MEDIAL, PLATEAU_LATERAL),
            new Line(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL),
            new Line(BEAK_MEDIAL, BEAK_LATERAL),
            new Line(PLAFOND_MEDIAL, PLAFOND_LATERAL),
            new Line(FEMUR_PHYSIS_POSTERIOR, FEMUR_PHYSIS_ANTERIOR),
            new Line(PLATEAU_POSTERIOR, PLATEAU_ANTERIOR),
            new Line(PLAFOND_POSTERIOR, PLAFOND_ANTERIOR));

    private final Map<Landmark, PlanePoint> points;
    private final boolean lateralKnown;

    private LimbFrame(Map<Landmark, PlanePoint> points, boolean lateralKnown) {
        this.points = points;
        this.lateralKnown = lateralKnown;
    }

    static LimbFrame of(LimbLandmarks landmarks, Calibration calibration) {
        Map<Landmark, PlanePoint> points = new EnumMap<>(Landmark.class);
        landmarks.points().forEach((landmark, point) -> points.put(landmark, calibration.toPlane(point)));
        LimbFrame asOnFilm = new LimbFrame(points, false);
        double turn = asOnFilm.lateral().cross(asOnFilm.distal());
        if (turn < 0) {
            points.replaceAll((_, point) -> new PlanePoint(-point.x(), point.y()));
        }
        return new LimbFrame(points, turn != 0);
    }

    boolean isLateralKnown() {
        return lateralKnown;
    }

    boolean has(Set<Landmark> landmarks) {
        return points.keySet().containsAll(landmarks);
    }

    Set<Landmark> missingOf(Set<Landmark> landmarks) {
        return landmarks.stream()
                .filter(landmark -> !points.containsKey(landmark))
                .collect(Collectors.toUnmodifiableSet());
    }

    PlanePoint at(Landmark landmark) {
        return Objects.requireNonNull(points.get(landmark), landmark::code);
    }

    Direction line(Landmark from, Landmark to) {
        return Direction.between(at(from), at(to));
    }

    PlanePoint condyleMidpoint() {
        return at(CONDYLE_MEDIAL).midpoint(at(CONDYLE_LATERAL));
    }

    PlanePoint plateauMidpoint() {
        return at(PLATEAU_MEDIAL).midpoint(at(PLATEAU_LATERAL));
    }

    PlanePoint kneeCentre() {
        return condyleMidpoint().midpoint(plateauMidpoint());
    }

    PlanePoint ankleCentre() {
        return at(PLAFOND_MEDIAL).midpoint(at(PLAFOND_LATERAL));
    }

    Direction femoralAxis() {
        return Direction.between(at(HIP_CENTRE), condyleMidpoint());
    }

    Direction tibialAxis() {
        return Direction.between(plateauMidpoint(), ankleCentre());
    }

    Direction limbAxis() {
        return Direction.between(at(HIP_CENTRE), ankleCentre());
    }

    Direction condyleLine() {
        return line(CONDYLE_MEDIAL, CONDYLE_LATERAL);
    }

    Direction plateauLine() {
        return line(PLATEAU_MEDIAL, PLATEAU_LATERAL);
    }

    Direction femoralShaft() {
        return line(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL);
    }

    Direction tibialShaft() {
        return line(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL);
    }

    private Direction lateral() {
        return LATERAL_LINES.stream()
                .filter(line -> has(Set.of(line.from(), line.to())))
                .map(line -> line(line.from(), line.to()))
                .reduce(Direction.NONE, LimbFrame::addUnit);
    }

    private Direction distal() {
        Set<Landmark> condyles = Set.of(CONDYLE_MEDIAL, CONDYLE_LATERAL);
        Set<Landmark> plateaus = Set.of(PLATEAU_MEDIAL, PLATEAU_LATERAL);
        Set<Landmark> plafond = Set.of(PLAFOND_MEDIAL, PLAFOND_LATERAL);
        Set<Landmark> hip = Set.of(HIP_CENTRE);
        Direction distal = List.<Optional<Direction>>of(
                        when(has(hip) && has(condyles), this::femoralAxis),
                        when(has(plateaus) && has(plafond), this::tibialAxis),
                        when(has(hip) && has(plafond), this::limbAxis),
                        when(has(Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL)), this::femoralShaft),
                        when(has(Set.of(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL)), this::tibialShaft))
                .stream()
                .flatMap(Optional::stream)
                .reduce(Direction.NONE, LimbFrame::addUnit);
        return distal.isZero() && has(condyles) && has(plateaus)
                ? Direction.between(condyleMidpoint(), plateauMidpoint())
                : distal;
    }

    private static Optional<Direction> when(boolean known, Supplier<Direction> direction) {
        return known ? Optional.of(direction.get()) : Optional.empty();
    }

    private static Direction addUnit(Direction sum, Direction next) {
        return next.isZero() ? sum : sum.plus(next.unit());
    }
}
