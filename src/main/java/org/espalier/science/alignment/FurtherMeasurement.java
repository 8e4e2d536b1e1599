package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

import java.util.Set;

/**
 * Measures what goes beyond the frontal set: metaphysis and plateau of the tibia, lengths by the film's own
 * definitions, implants, and films from the side.
 *
 * <pre>
 * EMA            = angle of the base of the tibial ossification centre (towards medial) and the line from its
 *                  middle to the medial beak, 0 to 180
 * slope          = turn of a plateau, outer end lower, from the perpendicular of the tibial mechanical axis
 * depression     = medial + lateral slope
 * screw angle    = angle of both screws; entry to tip where the entry is set, otherwise head to tip
 * PDFA, PPTA, ADTA as their names say: posterior distal femoral, posterior proximal and anterior distal tibial angle
 * bend, flexion  = turn from the proximal to the distal line, distal part backwards positive
 * </pre>
 *
 * <p>Source: EMA, Davids, Blackhurst and Allen, J Pediatr Orthop 2001;21:257 (name and cut-off read, construction from
 * memory); side-view angles, Paley, Principles of Deformity Correction, 2002 (from memory); the film's own lengths, a
 * radiology site's definition (read).
 *
 * @param frame the landmarks in the plane
 */
record FurtherMeasurement(LimbFrame frame) {

    private record Screw(Landmark head, Landmark entry, Landmark tip) {}

    private static final Screw FEMUR_UPPER =
            new Screw(FEMUR_METAPHYSIS_SCREW_HEAD, FEMUR_METAPHYSIS_SCREW_ENTRY, FEMUR_METAPHYSIS_SCREW_TIP);
    private static final Screw FEMUR_LOWER =
            new Screw(FEMUR_EPIPHYSIS_SCREW_HEAD, FEMUR_EPIPHYSIS_SCREW_ENTRY, FEMUR_EPIPHYSIS_SCREW_TIP);
    private static final Screw TIBIA_UPPER =
            new Screw(TIBIA_EPIPHYSIS_SCREW_HEAD, TIBIA_EPIPHYSIS_SCREW_ENTRY, TIBIA_EPIPHYSIS_SCREW_TIP);
    private static final Screw TIBIA_LOWER =
            new Screw(TIBIA_METAPHYSIS_SCREW_HEAD, TIBIA_METAPHYSIS_SCREW_ENTRY, TIBIA_METAPHYSIS_SCREW_TIP);

    static Set<Landmark> landmarksOf(Quantity quantity) {
        return switch (quantity) {
            case AMA -> Set.of(HIP_CENTRE, CONDYLE_MEDIAL, CONDYLE_LATERAL, FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL);
            case MDA_CORTEX -> Set.of(BEAK_MEDIAL, BEAK_LATERAL, TIBIA_CORTEX_PROXIMAL, TIBIA_CORTEX_DISTAL);
            case EMA -> Set.of(EPIPHYSIS_BASE_MEDIAL, EPIPHYSIS_BASE_LATERAL, BEAK_MEDIAL);
            case MEDIAL_PLATEAU_SLOPE ->
                Set.of(PLATEAU_MEDIAL, PLATEAU_MEDIAL_INNER, PLATEAU_LATERAL, PLAFOND_MEDIAL, PLAFOND_LATERAL);
            case LATERAL_PLATEAU_SLOPE ->
                Set.of(PLATEAU_LATERAL, PLATEAU_LATERAL_INNER, PLATEAU_MEDIAL, PLAFOND_MEDIAL, PLAFOND_LATERAL);
            case PLATEAU_DEPRESSION ->
                Set.of(PLATEAU_MEDIAL, PLATEAU_MEDIAL_INNER, PLATEAU_LATERAL, PLATEAU_LATERAL_INNER);
            case PATELLA_POSITION -> Set.of(PATELLA_CENTRE, CONDYLE_MEDIAL, CONDYLE_LATERAL);
            case FIBULA_POSITION -> Set.of(FIBULA_HEAD, PLATEAU_MEDIAL, PLATEAU_LATERAL);
            case FEMUR_FILM_LENGTH -> Set.of(HEAD_TOP, CONDYLE_MEDIAL);
            case TIBIA_FILM_LENGTH -> Set.of(PLATEAU_MEDIAL, PLAFOND_MEDIAL, PLAFOND_LATERAL);
            case LIMB_FILM_LENGTH -> Set.of(HEAD_TOP, PLAFOND_MEDIAL, PLAFOND_LATERAL);
            case FEMUR_SCREW_ANGLE -> ends(FEMUR_UPPER, FEMUR_LOWER);
            case TIBIA_SCREW_ANGLE -> ends(TIBIA_UPPER, TIBIA_LOWER);
            case FEMUR_METAPHYSIS_SCREW_EXPOSED -> Set.of(FEMUR_UPPER.head, FEMUR_UPPER.entry);
            case FEMUR_EPIPHYSIS_SCREW_EXPOSED -> Set.of(FEMUR_LOWER.head, FEMUR_LOWER.entry);
            case TIBIA_METAPHYSIS_SCREW_EXPOSED -> Set.of(TIBIA_LOWER.head, TIBIA_LOWER.entry);
            case TIBIA_EPIPHYSIS_SCREW_EXPOSED -> Set.of(TIBIA_UPPER.head, TIBIA_UPPER.entry);
            case FEMUR_PLATE_LENGTH -> Set.of(FEMUR_PLATE_PROXIMAL, FEMUR_PLATE_DISTAL);
            case TIBIA_PLATE_LENGTH -> Set.of(TIBIA_PLATE_PROXIMAL, TIBIA_PLATE_DISTAL);
            default -> sideLandmarks(quantity);
        };
    }

    /** What comes of a quantity whose landmarks are set. */
    Measured outcome(Quantity quantity) {
        return switch (quantity) {
            case AMA -> turn(quantity, frame.femoralAxis(), frame.femoralShaft());
            case MDA_CORTEX ->
                turn(
                        quantity,
                        frame.line(BEAK_MEDIAL, BEAK_LATERAL),
                        frame.line(TIBIA_CORTEX_PROXIMAL, TIBIA_CORTEX_DISTAL).lateralPerpendicular());
            case EMA -> epiphysisToBeak();
            case MEDIAL_PLATEAU_SLOPE -> turn(quantity, medialPlateau(), level());
            case LATERAL_PLATEAU_SLOPE -> turn(quantity, level(), lateralPlateau());
            case PLATEAU_DEPRESSION -> turn(quantity, medialPlateau(), lateralPlateau());
            case PATELLA_POSITION -> along(quantity, CONDYLE_MEDIAL, CONDYLE_LATERAL, PATELLA_CENTRE);
            case FIBULA_POSITION -> along(quantity, PLATEAU_MEDIAL, PLATEAU_LATERAL, FIBULA_HEAD);
            case TIBIA_FILM_LENGTH ->
                new Measured.Value(frame.at(PLATEAU_MEDIAL).distanceTo(frame.ankleCentre()));
            case LIMB_FILM_LENGTH -> new Measured.Value(frame.at(HEAD_TOP).distanceTo(frame.ankleCentre()));
            case FEMUR_SCREW_ANGLE -> screwAngle(quantity, FEMUR_UPPER, FEMUR_LOWER);
            case TIBIA_SCREW_ANGLE -> screwAngle(quantity, TIBIA_UPPER, TIBIA_LOWER);
            case FEMUR_FILM_LENGTH -> distance(HEAD_TOP, CONDYLE_MEDIAL);
            case FEMUR_METAPHYSIS_SCREW_EXPOSED -> distance(FEMUR_UPPER.head, FEMUR_UPPER.entry);
            case FEMUR_EPIPHYSIS_SCREW_EXPOSED -> distance(FEMUR_LOWER.head, FEMUR_LOWER.entry);
            case TIBIA_METAPHYSIS_SCREW_EXPOSED -> distance(TIBIA_LOWER.head, TIBIA_LOWER.entry);
            case TIBIA_EPIPHYSIS_SCREW_EXPOSED -> distance(TIBIA_UPPER.head, TIBIA_UPPER.entry);
            case FEMUR_PLATE_LENGTH -> distance(FEMUR_PLATE_PROXIMAL, FEMUR_PLATE_DISTAL);
            case TIBIA_PLATE_LENGTH -> distance(TIBIA_PLATE_PROXIMAL, TIBIA_PLATE_DISTAL);
            default -> fromTheSide(quantity);
        };
    }

    private Measured fromTheSide(Quantity quantity) {
        return switch (quantity) {
            case PDFA ->
                turn(
                        quantity,
                        frame.line(FEMUR_PHYSIS_ANTERIOR, FEMUR_PHYSIS_POSTERIOR),
                        frame.femoralShaft().reversed());
            case PPTA ->
                turn(quantity, frame.tibialShaft().reversed(), frame.line(PLATEAU_POSTERIOR, PLATEAU_ANTERIOR));
            case ADTA ->
                turn(quantity, frame.tibialShaft().reversed(), frame.line(PLAFOND_POSTERIOR, PLAFOND_ANTERIOR));
            case FEMUR_PROCURVATUM ->
                turn(
                        quantity,
                        frame.line(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_BEND),
                        frame.line(FEMUR_SHAFT_BEND, FEMUR_SHAFT_DISTAL));
            case TIBIA_PROCURVATUM ->
                turn(
                        quantity,
                        frame.line(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_BEND),
                        frame.line(TIBIA_SHAFT_BEND, TIBIA_SHAFT_DISTAL));
            case KNEE_FLEXION -> turn(quantity, frame.femoralShaft(), frame.tibialShaft());
            default -> throw new IllegalArgumentException(quantity + " belongs to the frontal set");
        };
    }

    private static Set<Landmark> sideLandmarks(Quantity quantity) {
        return switch (quantity) {
            case PDFA ->
                Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL, FEMUR_PHYSIS_ANTERIOR, FEMUR_PHYSIS_POSTERIOR);
            case PPTA -> Set.of(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL, PLATEAU_ANTERIOR, PLATEAU_POSTERIOR);
            case ADTA -> Set.of(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL, PLAFOND_ANTERIOR, PLAFOND_POSTERIOR);
            case FEMUR_PROCURVATUM -> Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_BEND, FEMUR_SHAFT_DISTAL);
            case TIBIA_PROCURVATUM -> Set.of(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_BEND, TIBIA_SHAFT_DISTAL);
            case KNEE_FLEXION ->
                Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL, TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL);
            default -> throw new IllegalArgumentException(quantity + " belongs to the frontal set");
        };
    }

    private Direction level() {
        return frame.tibialAxis().lateralPerpendicular();
    }

    /** From its outer to its inner end, medial to lateral. */
    private Direction medialPlateau() {
        return frame.line(PLATEAU_MEDIAL, PLATEAU_MEDIAL_INNER);
    }

    /** From its inner to its outer end, medial to lateral. */
    private Direction lateralPlateau() {
        return frame.line(PLATEAU_LATERAL_INNER, PLATEAU_LATERAL);
    }

    private Measured turn(Quantity quantity, Direction from, Direction to) {
        if (from.isZero() || to.isZero()) {
            return absent(quantity, Measured.Reason.POINTS_COINCIDE);
        }
        return frame.isLateralKnown()
                ? new Measured.Value(from.turnTo(to))
                : absent(quantity, Measured.Reason.LATERAL_UNCLEAR);
    }

    private Measured epiphysisToBeak() {
        var middle = frame.at(EPIPHYSIS_BASE_MEDIAL).midpoint(frame.at(EPIPHYSIS_BASE_LATERAL));
        Direction base = frame.line(EPIPHYSIS_BASE_LATERAL, EPIPHYSIS_BASE_MEDIAL);
        Direction toBeak = Direction.between(middle, frame.at(BEAK_MEDIAL));
        return base.isZero() || toBeak.isZero()
                ? absent(Quantity.EMA, Measured.Reason.POINTS_COINCIDE)
                : new Measured.Value(Math.abs(base.turnTo(toBeak)));
    }

    private Measured along(Quantity quantity, Landmark medial, Landmark lateral, Landmark point) {
        Direction line = frame.line(medial, lateral);
        return line.isZero()
                ? absent(quantity, Measured.Reason.POINTS_COINCIDE)
                : new Measured.Value(100 * frame.line(medial, point).dot(line) / line.dot(line));
    }

    private Measured distance(Landmark from, Landmark to) {
        return new Measured.Value(frame.at(from).distanceTo(frame.at(to)));
    }

    private Measured screwAngle(Quantity quantity, Screw upper, Screw lower) {
        Direction up = axis(upper);
        Direction down = axis(lower);
        if (up.isZero() || down.isZero()) {
            return absent(quantity, Measured.Reason.POINTS_COINCIDE);
        }
        double atHeads = frame.at(upper.head).distanceTo(frame.at(lower.head));
        double atTips = frame.at(upper.tip).distanceTo(frame.at(lower.tip));
        return new Measured.Value(Math.copySign(Math.abs(up.turnTo(down)), atTips - atHeads));
    }

    private Direction axis(Screw screw) {
        return frame.has(Set.of(screw.entry)) ? frame.line(screw.entry, screw.tip) : frame.line(screw.head, screw.tip);
    }

    private static Set<Landmark> ends(Screw upper, Screw lower) {
        return Set.of(upper.head, upper.tip, lower.head, lower.tip);
    }

    private static Measured absent(Quantity quantity, Measured.Reason reason) {
        return new Measured.Absent(reason, landmarksOf(quantity));
    }
}
