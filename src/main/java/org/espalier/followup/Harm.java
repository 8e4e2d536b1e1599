package org.espalier.followup;

import java.util.Optional;
import org.espalier.prognosis.Past;

/**
 * How bad it is to wait longer.
 *
 * @param degrees degrees at stake by the next month, for ranking: what is not known at all stands above every number
 * @param plate the growth plate that comes to harm; empty when nothing worse is known than being late
 * @param past how far it goes past its target, and into what
 */
public record Harm(Kind kind, double degrees, Optional<GrowthPlate> plate, Optional<Past> past) {

    /** What the harm is. */
    public enum Kind {
        /** A plate lies there and no film was read since. */
        UNKNOWN_SINCE_PLATE,
        /** A screw was seen bent, broken or loose. */
        SCREW,
        /** The angle is expected past its target. */
        PAST_TARGET,
        /** Soon a plate can no longer reach the target. */
        WINDOW,
        /** Nothing worse than being late. */
        OVERDUE
    }

    /** Harm to one growth plate that is no angle past its target. */
    static Harm of(Kind kind, double degrees, GrowthPlate plate) {
        return new Harm(kind, degrees, Optional.of(plate), Optional.empty());
    }

    /** Nothing worse than being late. */
    static final Harm OVERDUE = new Harm(Kind.OVERDUE, 0, Optional.empty(), Optional.empty());
}
