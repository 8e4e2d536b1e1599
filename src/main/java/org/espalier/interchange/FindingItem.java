package org.espalier.interchange;

import java.util.Optional;
import org.espalier.science.quantity.Side;

/**
 * One thing that was measured or found, as a cell says it.
 *
 * @param side of the leg; empty for what belongs to the whole child
 */
record FindingItem(String name, Optional<Side> side, String value) {

    static FindingItem of(String name, String value) {
        return new FindingItem(name, Optional.empty(), value);
    }

    static FindingItem of(String name, Side side, String value) {
        return new FindingItem(name, Optional.of(side), value);
    }

    String asText() {
        return name + "/" + side.map(Side::letter).orElse("") + "/" + value;
    }
}
