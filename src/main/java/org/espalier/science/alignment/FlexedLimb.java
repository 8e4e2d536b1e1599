package org.espalier.science.alignment;

import java.util.Optional;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * A limb that is straight from the front, its knee flexed, seen while turned: how much deviation the film shows that is
 * not there. Two stiff segments, hip above ankle; a rough guide to the size of the error, without its direction.
 *
 * <p>Source: plane geometry; the size agrees with Brunner and others, Knee Surg Sports Traumatol Arthrosc 2023;31:1483
 * (±15 degrees of turn at 30 of flexion move the axis by about 25 mm).
 *
 * @param femur hip to knee, above 0
 * @param tibia knee to ankle, above 0
 * @param flexion of the knee, 0 to 90 degrees
 * @param turn of the limb about the upright, −90 to 90 degrees
 */
public record FlexedLimb(Length femur, Length tibia, Angle flexion, Angle turn) {

    /** The distance from hip to ankle on the film, √(F² + T² + 2FT cos f). */
    public Length projectedLength() {
        double f = femur.millimetres();
        double t = tibia.millimetres();
        return new Length(Math.sqrt(f * f + t * t + 2 * f * t * Math.cos(flexion.toRadians())));
    }

    /** How far beside the axis the knee appears, F T sin f / √(F² + T² + 2FT cos f) · sin r. */
    public Length apparentAxisDeviation() {
        return new Length(kneeForward() * Math.sin(turn.toRadians()));
    }

    /** The angle between the axes of femur and tibia on the film, atan(tan α sin r) + atan(tan β sin r). */
    public Angle apparentKneeAngle() {
        double sine = Math.sin(turn.toRadians());
        double femoral = Math.asin(kneeForward() / femur.millimetres());
        double tibial = Math.asin(kneeForward() / tibia.millimetres());
        return Angle.ofRadians(Math.atan(Math.tan(femoral) * sine) + Math.atan(Math.tan(tibial) * sine));
    }

    /**
     * By how much standing men's shaft angle read more valgus with the knees flexed, without a turn: 0.101 f + 0.296.
     *
     * <p>Source: 17 men, Knee, doi 10.1016/S0968-0160(02)00049-2 (regression, R 0.85); no children.
     *
     * @param flexion of the knee
     * @return degrees towards valgus; empty outside 15 to 25 degrees of flexion, where it was not measured
     */
    public static Optional<Angle> observedValgusShift(Angle flexion) {
        return flexion.degrees() >= 15 && flexion.degrees() <= 25
                ? Optional.of(new Angle(0.101 * flexion.degrees() + 0.296))
                : Optional.empty();
    }

    private double kneeForward() {
        return femur.millimetres()
                * tibia.millimetres()
                * Math.sin(flexion.toRadians())
                / projectedLength().millimetres();
    }
}
