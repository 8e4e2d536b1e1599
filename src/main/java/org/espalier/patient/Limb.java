package org.espalier.patient;

import java.util.List;
import org.espalier.science.quantity.Side;

/** One leg with the growth plates that are followed. */
public record Limb(LimbId id, Side side, List<Physis> physes) {

    public Limb {
        physes = List.copyOf(physes);
    }
}
