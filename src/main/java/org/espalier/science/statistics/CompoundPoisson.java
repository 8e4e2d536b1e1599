package org.espalier.science.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * How many pieces are asked for when operations come independently at a steady mean rate, and each takes a number of
 * pieces of its own.
 *
 * <pre>
 * P(0)  = exp(−λ (1 − p(0)))
 * P(s)  = (λ / s) Σ k p(k) P(s − k)        k from 1 to s
 * mean  = λ Σ k p(k)                       variance = λ Σ k² p(k)
 * </pre>
 *
 * <p>A stock that covers the mean covers far fewer weeks than a simple Poisson count of pieces promises, because pieces
 * go in fours, not one by one. Source: Panjer, ASTIN Bull 1981;12:22 (recursion; from memory). Error: sums of doubles,
 * below 1e−12 up to a few thousand pieces; the operations of one lead time must number less than
 * {@value #MOST_OPERATIONS}.
 *
 * @param operations λ, mean number of operations in the lead time, 0 to 700
 * @param pieces p(k), the chance that an operation takes k pieces, k from 0; they add up to 1
 */
public record CompoundPoisson(double operations, List<Double> pieces) {

    /** Above it exp(−λ) is no longer a normal double. */
    public static final int MOST_OPERATIONS = 700;

    private static final double ROUNDING = 1e-9;
    private static final int MOST_PIECES = 1_000_000;

    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if λ is not from 0 to 700, a chance is not from 0 to 1, or they do not add up to
     *     1
     */
    public CompoundPoisson {
        if (!(operations >= 0 && operations <= MOST_OPERATIONS)) {
            throw new IllegalArgumentException("The mean number of operations is not from 0 to 700: " + operations);
        }
        double sum = pieces.stream().mapToDouble(Double::doubleValue).sum();
        if (!pieces.stream().allMatch(chance -> chance >= 0 && chance <= 1) || !(Math.abs(sum - 1) <= ROUNDING)) {
            throw new IllegalArgumentException("The chances of how many pieces are taken add up to 1, not " + sum);
        }
        pieces = List.copyOf(pieces);
    }

    /**
     * From what past operations took.
     *
     * @param operations λ, 0 to 700
     * @param taken how many pieces each took, at least one operation, none below 0
     * @throws IllegalArgumentException if there is none or one took less than none
     */
    public static CompoundPoisson ofPast(double operations, List<Integer> taken) {
        if (taken.isEmpty() || taken.stream().anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException(
                    "There are no past operations to learn from, or one is below 0: " + taken);
        }
        var chances =
                new double[taken.stream().mapToInt(Integer::intValue).max().orElse(0) + 1];
        taken.forEach(count -> chances[count] += 1.0 / taken.size());
        return new CompoundPoisson(operations, Arrays.stream(chances).boxed().toList());
    }

    /** The mean number of pieces. */
    public double mean() {
        return operations * moment(1);
    }

    /** The variance of the number of pieces. */
    public double variance() {
        return operations * moment(2);
    }

    /** The chance that no more than this many pieces are asked for, 0 to 1; 0 below no piece. */
    public double atMost(int most) {
        double sum = 0;
        for (double chance : chances(most)) {
            sum += chance;
        }
        return Math.min(1, sum);
    }

    /**
     * The least stock that suffices with at least this chance.
     *
     * @param service 0 to below 1
     * @throws IllegalArgumentException if it is not in that range
     */
    public int stockFor(double service) {
        if (!(service >= 0 && service < 1)) {
            throw new IllegalArgumentException("A service level is from 0 to below 1, not " + service);
        }
        var chances = new ArrayList<Double>();
        double sum = 0;
        for (int stock = 0; stock < MOST_PIECES; stock++) {
            chances.add(next(chances));
            sum += chances.getLast();
            if (sum >= service || sum >= 1 - 1e-13) {
                return stock;
            }
        }
        throw new IllegalArgumentException("No stock below a million pieces suffices with chance " + service);
    }

    private List<Double> chances(int most) {
        var chances = new ArrayList<Double>();
        while (chances.size() <= most) {
            chances.add(next(chances));
        }
        return chances;
    }

    private double next(List<Double> before) {
        int sum = before.size();
        if (sum == 0) {
            return Math.exp(-operations * (1 - pieces.getFirst()));
        }
        double terms = 0;
        for (int taken = 1; taken <= Math.min(sum, pieces.size() - 1); taken++) {
            terms += taken * pieces.get(taken) * before.get(sum - taken);
        }
        return operations / sum * terms;
    }

    private double moment(int power) {
        double sum = 0;
        for (int taken = 1; taken < pieces.size(); taken++) {
            sum += Math.pow(taken, power) * pieces.get(taken);
        }
        return sum;
    }
}
