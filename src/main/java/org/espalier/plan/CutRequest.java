package org.espalier.plan;

import static java.util.Objects.requireNonNullElse;

import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * What the desk asks while a hand moves a cut.
 *
 * @param seq counts the changes; the answer bears it
 * @param x1 one end of the cut, pixels of the film, as all places
 * @param hx the hinge
 * @param outwards degrees by which the lower part swings outwards, − inwards, within 60
 * @param kind straight when it is not said
 */
public record CutRequest(
        long seq,
        Side side,
        double x1,
        double y1,
        double x2,
        double y2,
        double hx,
        double hy,
        double outwards,
        @Nullable CutKind kind) {

    private static final double MOST = 60;
    private static final double FARTHEST = 100_000;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException for a turn beyond 60 degrees, and a place on no film
     */
    public CutRequest {
        if (!(Math.abs(outwards) <= MOST)) {
            throw new IllegalArgumentException("A cut turns by up to 60 degrees, not by " + outwards);
        }
        for (double place : new double[] {x1, y1, x2, y2, hx, hy}) {
            if (!(Math.abs(place) <= FARTHEST)) {
                throw new IllegalArgumentException("No film reaches to " + place);
            }
        }
    }

    CutKind shape() {
        return requireNonNullElse(kind, CutKind.STRAIGHT);
    }
}
