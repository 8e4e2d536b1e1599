package org.espalier.cost;

import java.util.Optional;

/**
 * What a pathway cost, of limbs enough that nobody is known by it.
 *
 * @param spread of the cost of a limb
 * @param target how often it reached its target, with what that cost; empty when too few are known
 */
public record PathwayFigures(Spread spread, double meanOperations, Optional<Reached> target) {

    /**
     * Of the limbs of which films tell.
     *
     * @param known of how many films tell
     * @param reached how many were within reader error of their target at the end
     * @param perLimb what all of them cost, divided by those that reached it; empty when none did
     * @param perDegree what all of them cost, divided by the degrees their growth plates came nearer; empty when none
     *     came
     */
    public record Reached(int known, int reached, Optional<Money> perLimb, Optional<Money> perDegree) {}
}
