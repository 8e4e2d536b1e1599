package org.espalier.treatment;

import java.util.List;
import org.espalier.patient.Child;

/**
 * A child for whom theatre has a place on a day.
 *
 * @param standing what is to be done
 */
public record TheatreCase(Child child, List<StandingPlan> standing) {

    public TheatreCase {
        standing = List.copyOf(standing);
    }

    public List<Plan> plans() {
        return standing.stream().map(StandingPlan::plan).toList();
    }
}
