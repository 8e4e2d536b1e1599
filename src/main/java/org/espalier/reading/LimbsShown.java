package org.espalier.reading;

import java.util.List;
import java.util.Set;
import org.espalier.science.quantity.Side;

/** The limbs a film shows, whether they are read or not. */
public enum LimbsShown {
    NOT_RECORDED,
    BOTH,
    RIGHT,
    LEFT;

    /** Where it is not recorded, those that are read: no other limb is supposed to be there. */
    Set<Side> sides(List<Side> read) {
        return switch (this) {
            case NOT_RECORDED -> Set.copyOf(read);
            case BOTH -> Set.of(Side.RIGHT, Side.LEFT);
            case RIGHT -> Set.of(Side.RIGHT);
            case LEFT -> Set.of(Side.LEFT);
        };
    }
}
