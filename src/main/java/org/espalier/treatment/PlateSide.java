package org.espalier.treatment;

/** The side of the bone on which something holds a physis back. */
public enum PlateSide {
    MEDIAL,
    LATERAL,
    ANTERIOR,
    POSTERIOR;

    /** Whether a tether here turns the bone the way the deformity already goes. */
    public boolean worsens(Deformity deformity) {
        return switch (deformity) {
            case VARUS -> this == MEDIAL;
            case VALGUS -> this == LATERAL;
            case FLEXION -> this == POSTERIOR;
            case RECURVATUM -> this == ANTERIOR;
            case OVERLENGTH -> false;
        };
    }

    /** The other side of the bone. */
    public PlateSide opposite() {
        return switch (this) {
            case MEDIAL -> LATERAL;
            case LATERAL -> MEDIAL;
            case ANTERIOR -> POSTERIOR;
            case POSTERIOR -> ANTERIOR;
        };
    }
}
