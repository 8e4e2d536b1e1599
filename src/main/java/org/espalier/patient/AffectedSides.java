package org.espalier.patient;

import org.espalier.science.quantity.Side;

/** Which limbs a diagnosis is about. */
public enum AffectedSides {
    RIGHT,
    LEFT,
    BOTH;

    /** Whether the limb of the side is one of them. */
    public boolean covers(Side side) {
        return this == BOTH || name().equals(side.name());
    }
}
