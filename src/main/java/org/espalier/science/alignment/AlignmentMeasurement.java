package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;

/**
 * Measures the frontal alignment of one limb.
 *
 * <p>Pixels are brought to the plane first, so that pixels that are not square do no harm. Axes: femur from hip centre
 * to the midpoint of the condyle line, tibia from the midpoint of the plateau line to the ankle centre, limb from hip
 * centre to ankle centre. Knee centre is the mean of both midpoints, ankle centre the midpoint of the plafond. With θ
 * the turn of a line in the frame whose lateral-to-distal turn is positive:
 *
 * <pre>
 * mLDFA = θ(condyles) − θ(hip from knee)     HKA  = θ(tibial axis) − θ(femoral axis)
 * mMPTA = θ(plateau) − θ(knee from ankle)    JLCA = θ(plateau) − θ(condyles)
 * HKA   = mLDFA − mMPTA + JLCA               exactly
 * </pre>
 *
 * <p>Source: Paley, Principles of Deformity Correction, 2002, chapters 1 and 2 (from memory where the text could not be
 * read); the identity is arithmetic.
 */
public final class AlignmentMeasurement {

    private static final Set<Landmark> CONDYLES = Set.of(CONDYLE_MEDIAL, CONDYLE_LATERAL);
    private static final Set<Landmark> PLATEAUS = Set.of(PLATEAU_MEDIAL, PLATEAU_LATERAL);
    private static final Set<Landmark> PLAFOND = Set.of(PLAFOND_MEDIAL, PLAFOND_LATERAL);
    private static final Set<Landmark> FEMORAL_AXIS = union(Set.of(HIP_CENTRE), CONDYLES);
    private static final Set<Landmark> TIBIAL_AXIS = union(PLATEAUS, PLAFOND);
    private static final Set<Landmark> LIMB_AXIS = union(Set.of(HIP_CENTRE), PLAFOND);
    private static final Set<Landmark> FEMORAL_SHAFT = Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL);
    private static final Set<Landmark> TIBIAL_SHAFT = Set.of(TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL);
    private static final Set<Landmark> FEMORAL_PHYSIS = Set.of(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL);
    private static final Set<Landmark> TIBIAL_PHYSIS = Set.of(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL);
    private static final Set<Landmark> FEMORAL_BEAKS = Set.of(FEMUR_BEAK_MEDIAL, FEMUR_BEAK_LATERAL);
    private static final Set<Landmark> TIBIAL_BEAKS = Set.of(BEAK_MEDIAL, BEAK_LATERAL);

    /** Lines whose sine is smaller cross too far away to tell where. */
    private static final double PARALLEL = 1e-6;

    private final LimbFrame frame;
    private final boolean calibrated;

    private AlignmentMeasurement(LimbFrame frame, boolean calibrated) {
        this.frame = frame;
        this.calibrated = calibrated;
    }

    /**
     * Measures every quantity the landmarks allow; of the others the outcome says why not.
     *
     * @param side the child's own side, kept with the numbers
     * @param landmarks pixels of the film as stored
     * @param calibration how pixels become millimetres; without, no length is told
     */
    public static LimbNumbers measure(Side side, LimbLandmarks landmarks, Calibration calibration) {
        var measurement = new AlignmentMeasurement(LimbFrame.of(landmarks, calibration), calibration.isInMillimetres());
        Map<Quantity, Measured> outcomes = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            outcomes.put(quantity, measurement.measure(quantity));
        }
        return new LimbNumbers(side, outcomes);
    }

    /**
     * The landmarks a quantity is made of.
     *
     * @param quantity the quantity
     */
    public static Set<Landmark> landmarksOf(Quantity quantity) {
        return switch (quantity) {
            case MLDFA, FEMUR_LENGTH -> FEMORAL_AXIS;
            case MMPTA, LDTA, TIBIA_LENGTH -> TIBIAL_AXIS;
            case LPFA -> union(FEMORAL_AXIS, Set.of(TROCHANTER_TIP));
            case ALDFA -> union(FEMORAL_SHAFT, CONDYLES);
            case JLCA, KNEE_OFFSET -> union(CONDYLES, PLATEAUS);
            case HKA, BONY_HKA, MAD -> union(FEMORAL_AXIS, TIBIAL_AXIS);
            case ATFA -> union(FEMORAL_SHAFT, TIBIAL_SHAFT);
            case WBL -> union(LIMB_AXIS, PLATEAUS);
            case MDA -> union(TIBIAL_BEAKS, TIBIAL_SHAFT);
            case FMDA -> union(FEMORAL_BEAKS, FEMORAL_SHAFT);
            case FEMUR_PHYSIS_ANGLE -> union(FEMORAL_AXIS, FEMORAL_PHYSIS);
            case TIBIA_PHYSIS_ANGLE -> union(TIBIAL_AXIS, TIBIAL_PHYSIS);
            case LIMB_LENGTH -> LIMB_AXIS;
            case FEMUR_PHYSIS_WIDTH -> FEMORAL_PHYSIS;
            case TIBIA_PHYSIS_WIDTH -> TIBIAL_PHYSIS;
            default -> FurtherMeasurement.landmarksOf(quantity);
        };
    }

    private Measured measure(Quantity quantity) {
        Set<Landmark> needed = landmarksOf(quantity);
        if (!frame.has(needed)) {
            return new Measured.Absent(Measured.Reason.LANDMARKS_MISSING, frame.missingOf(needed));
        }
        if (quantity.unit() == Quantity.Unit.MILLIMETRES && !calibrated) {
            return new Measured.Absent(Measured.Reason.UNCALIBRATED, Set.of());
        }
        return outcome(quantity);
    }

    private Measured outcome(Quantity quantity) {
        return switch (quantity) {
            case MLDFA -> jointAngle(quantity, frame.femoralAxis().reversed(), frame.condyleLine());
            case MMPTA -> jointAngle(quantity, frame.tibialAxis().reversed(), frame.plateauLine());
            case LDTA ->
                jointAngle(quantity, frame.tibialAxis().reversed(), frame.line(PLAFOND_MEDIAL, PLAFOND_LATERAL));
            case LPFA -> jointAngle(quantity, frame.line(HIP_CENTRE, TROCHANTER_TIP), frame.femoralAxis());
            case ALDFA -> jointAngle(quantity, frame.femoralShaft().reversed(), frame.condyleLine());
            case JLCA -> tilt(quantity, frame.condyleLine(), frame.plateauLine());
            case HKA -> turn(quantity, frame.femoralAxis(), frame.tibialAxis());
            case BONY_HKA -> bonyDeviation();
            case ATFA -> tilt(quantity, frame.tibialShaft(), frame.femoralShaft());
            case MAD -> axisDeviation();
            case WBL -> axisCrossing();
            case KNEE_OFFSET -> kneeOffset();
            case MDA ->
                tilt(
                        quantity,
                        frame.line(BEAK_MEDIAL, BEAK_LATERAL),
                        frame.tibialShaft().lateralPerpendicular());
            case FMDA ->
                tilt(
                        quantity,
                        frame.femoralShaft().lateralPerpendicular(),
                        frame.line(FEMUR_BEAK_MEDIAL, FEMUR_BEAK_LATERAL));
            case FEMUR_PHYSIS_ANGLE ->
                jointAngle(
                        quantity,
                        frame.femoralAxis().reversed(),
                        frame.line(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL));
            case TIBIA_PHYSIS_ANGLE ->
                jointAngle(
                        quantity, frame.tibialAxis().reversed(), frame.line(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL));
            default -> length(quantity);
        };
    }

    private Measured length(Quantity quantity) {
        return switch (quantity) {
            case FEMUR_LENGTH -> new Measured.Value(frame.femoralAxis().length());
            case TIBIA_LENGTH -> new Measured.Value(frame.tibialAxis().length());
            case LIMB_LENGTH -> new Measured.Value(frame.limbAxis().length());
            case FEMUR_PHYSIS_WIDTH ->
                new Measured.Value(
                        frame.line(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL).length());
            case TIBIA_PHYSIS_WIDTH ->
                new Measured.Value(
                        frame.line(TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL).length());
            default -> new FurtherMeasurement(frame).outcome(quantity);
        };
    }

    /** The turn between a bone and a joint line, between 0 and 180 degrees when the line's ends are as named. */
    private Measured jointAngle(Quantity quantity, Direction from, Direction to) {
        Measured turn = turn(quantity, from, to);
        return turn instanceof Measured.Value(double value) && value <= 0
                ? absent(quantity, Measured.Reason.ENDS_EXCHANGED)
                : turn;
    }

    /** The turn between two lines that run nearly the same way when their ends are as named. */
    private Measured tilt(Quantity quantity, Direction from, Direction to) {
        Measured turn = turn(quantity, from, to);
        return turn instanceof Measured.Value(double value) && Math.abs(value) > 90
                ? absent(quantity, Measured.Reason.ENDS_EXCHANGED)
                : turn;
    }

    private Measured turn(Quantity quantity, Direction from, Direction to) {
        if (from.isZero() || to.isZero()) {
            return absent(quantity, Measured.Reason.POINTS_COINCIDE);
        }
        return frame.isLateralKnown()
                ? new Measured.Value(from.turnTo(to))
                : absent(quantity, Measured.Reason.LATERAL_UNCLEAR);
    }

    private Measured bonyDeviation() {
        Measured femoral = outcome(Quantity.MLDFA);
        Measured tibial = outcome(Quantity.MMPTA);
        if (femoral instanceof Measured.Value(double ldfa) && tibial instanceof Measured.Value(double mpta)) {
            return new Measured.Value(ldfa - mpta);
        }
        return femoral instanceof Measured.Absent ? femoral : tibial;
    }

    private Measured axisDeviation() {
        Direction axis = frame.limbAxis();
        if (axis.isZero()) {
            return absent(Quantity.MAD, Measured.Reason.POINTS_COINCIDE);
        }
        if (!frame.isLateralKnown()) {
            return absent(Quantity.MAD, Measured.Reason.LATERAL_UNCLEAR);
        }
        Direction toKnee = Direction.between(frame.at(HIP_CENTRE), frame.kneeCentre());
        return new Measured.Value(axis.unit().cross(toKnee));
    }

    private Measured axisCrossing() {
        Direction axis = frame.limbAxis();
        Direction plateau = frame.plateauLine();
        if (axis.isZero() || plateau.isZero()) {
            return absent(Quantity.WBL, Measured.Reason.POINTS_COINCIDE);
        }
        double sine = axis.unit().cross(plateau.unit());
        if (Math.abs(sine) < PARALLEL) {
            return absent(Quantity.WBL, Measured.Reason.LINES_PARALLEL);
        }
        Direction fromMedialEnd = Direction.between(frame.at(PLATEAU_MEDIAL), frame.at(HIP_CENTRE));
        return new Measured.Value(100 * axis.cross(fromMedialEnd) / axis.cross(plateau));
    }

    private Measured kneeOffset() {
        Direction plateau = frame.plateauLine();
        return plateau.isZero()
                ? absent(Quantity.KNEE_OFFSET, Measured.Reason.POINTS_COINCIDE)
                : new Measured.Value(Direction.between(frame.condyleMidpoint(), frame.plateauMidpoint())
                        .dot(plateau.unit()));
    }

    private static Measured absent(Quantity quantity, Measured.Reason reason) {
        return new Measured.Absent(reason, landmarksOf(quantity));
    }

    private static Set<Landmark> union(Set<Landmark> first, Set<Landmark> second) {
        return Stream.concat(first.stream(), second.stream()).collect(Collectors.toUnmodifiableSet());
    }
}
