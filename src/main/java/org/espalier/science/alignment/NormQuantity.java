package org.espalier.science.alignment;

/** What a norm is of. */
public enum NormQuantity {
    /** Angle of thigh and leg, or of their shafts, in degrees, positive in valgus. */
    TIBIOFEMORAL,
    /** Distance of knees or ankles in millimetres: positive between the ankles, negative between the knees. */
    KNEE_GAP,
    /** Angle of the femur's shaft and mechanical axis, in degrees. */
    AXIS_ANGLE,
    /** Deviation of the tibial from the femoral mechanical axis in degrees, positive in varus. */
    HKA,
    /** Lateral angle of femoral mechanical axis and condyle line, in degrees. */
    MLDFA,
    /** Medial angle of tibial mechanical axis and plateau line, in degrees. */
    MMPTA
}
