package org.espalier.followup;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The visits of a child.
 *
 * @param open the one that is open; empty only when care ended
 * @param past those that are over, the last first
 * @param steps what happened to any of them, the last first
 * @param end that care ended; empty in care
 */
public record Visits(Optional<Visit> open, List<Visit> past, List<VisitStep> steps, Optional<CareEnd> end) {

    public Visits {
        past = List.copyOf(past);
        steps = List.copyOf(steps);
    }

    /** How often the child was not brought since it last came. */
    public int notBroughtInARow() {
        return (int) past.stream()
                .takeWhile(visit -> visit.state() != VisitState.ARRIVED)
                .filter(visit -> visit.state() == VisitState.NOT_BROUGHT)
                .count();
    }

    /** All of them, the last first. */
    public List<Visit> all() {
        return Stream.concat(open.stream(), past.stream()).toList();
    }
}
