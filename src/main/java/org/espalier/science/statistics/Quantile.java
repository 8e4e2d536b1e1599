package org.espalier.science.statistics;

import java.util.List;

/**
 * The value that a share of several values lies at or below, drawn straight between neighbours.
 *
 * <pre>
 * h    = (n − 1) p        with the values x(0) to x(n − 1) in order
 * Q(p) = x(⌊h⌋) + (h − ⌊h⌋) (x(⌊h⌋ + 1) − x(⌊h⌋))
 * </pre>
 *
 * <p>Source: Hyndman and Fan, Am Stat 1996;50:361, definition 7 (from memory).
 */
public final class Quantile {

    private Quantile() {}

    /**
     * The quantile.
     *
     * @param values in any order, at least one
     * @param part p, 0 to 1; ½ for the median
     * @return in the unit of the values
     * @throws IllegalArgumentException if there is no value or p is not from 0 to 1
     */
    public static double of(List<Double> values, double part) {
        if (values.isEmpty() || !(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException("There is no quantile " + part + " of " + values.size() + " values");
        }
        var ordered = values.stream().sorted().toList();
        double place = part * (ordered.size() - 1);
        int below = (int) place;
        double low = ordered.get(below);
        double high = ordered.get(Math.min(below + 1, ordered.size() - 1));
        return low + (place - below) * (high - low);
    }
}
