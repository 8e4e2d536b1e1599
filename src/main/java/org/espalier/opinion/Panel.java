package org.espalier.opinion;

import java.util.List;
import java.util.UUID;

/** A named group of colleagues. */
public record Panel(UUID id, String name, String madeBy, boolean mine, List<Colleague> members) {

    public Panel {
        members = List.copyOf(members);
    }
}
