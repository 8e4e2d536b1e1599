package org.espalier.treatment;

import java.util.List;
import org.espalier.patient.Child;

/** A child for whom theatre has a place on a day, with what is to be done. */
public record TheatreCase(Child child, List<Plan> plans) {

    public TheatreCase {
        plans = List.copyOf(plans);
    }
}
