package org.espalier.reading.ui;

import java.util.List;
import org.espalier.science.quantity.Side;

/** Which limbs of a film are read. */
enum LimbChoice {
    BOTH(Side.RIGHT, Side.LEFT),
    RIGHT(Side.RIGHT),
    LEFT(Side.LEFT);

    private final List<Side> sides;

    LimbChoice(Side... sides) {
        this.sides = List.of(sides);
    }

    static LimbChoice of(List<Side> sides) {
        return sides.size() > 1 ? BOTH : valueOf(sides.getFirst().name());
    }

    List<Side> sides() {
        return sides;
    }
}
