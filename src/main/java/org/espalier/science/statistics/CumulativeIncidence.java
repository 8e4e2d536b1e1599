package org.espalier.science.statistics;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToIntFunction;

/**
 * How large a share has come to each of several ends by a time, when one end rules out the others and some are still on
 * their way: Aalen and Johansen's estimate.
 *
 * <pre>
 * S(t)   = Π (1 − d/n)                      over the times up to t; d came to any end of the n still followed
 * F(t)   = Σ S(before) k/n                  k of the d came to this end
 * var F  = Σ (F(t) − F)² d/(n (n − d)) + S(before)² k (n − k)/n³ − 2 (F(t) − F) S(before) k/n²
 * limits = 1 − (1 − F)^exp(±z v)            v = √var F / ((1 − F) ln(1 − F)), z = 1.959964
 * </pre>
 *
 * <p>Those still on their way at a time count as followed at that time: an end on the same day comes before it. The
 * shares of all ends and of those at none add up to 1. One less Kaplan and Meier's survivor of one end would be too
 * high: it takes the other ends for still on their way. The variance is the delta method on counts drawn anew at each
 * time; with one end it is Greenwood's and the limits are the log-log limits of the survivor, and with everybody
 * followed to an end it is F (1 − F)/n.
 *
 * <p>Whoever is still on the way is taken to be no different from the others, and all to be independent of each other:
 * two legs of one child are not. A time is the day on which an end was seen; it came some time after the look before.
 *
 * <p>Source: Aalen and Johansen, Scand J Stat 1978;5:141; variance: Marubini and Valsecchi, Analysing Survival Data,
 * Wiley 1995, chapter 10, and Allignol, Schumacher and Beyersmann, Biom J 2010;52:126 for preferring this kind (all
 * from memory; the variance derived anew). Error: sums of doubles; limits are rough below about ten still followed.
 *
 * @param <C> the ends
 */
public final class CumulativeIncidence<C extends Enum<C>> {

    /** Shares nearer to 0 or 1 than this are taken for it: rounding, far below one in the largest group. */
    private static final double ROUNDING = 1e-12;

    private final List<Double> times;
    private final List<Row<C>> rows;

    private CumulativeIncidence(List<Double> times, List<Row<C>> rows) {
        this.times = times;
        this.rows = rows;
    }

    /**
     * One that was followed.
     *
     * @param time since the start, not below 0, in a unit of the caller's
     * @param end what it came to then; empty while it is still on its way
     * @param <C> the ends
     */
    public record Followed<C>(double time, Optional<C> end) {

        /**
         * Checks the time.
         *
         * @throws IllegalArgumentException if it is not finite or below 0
         */
        public Followed {
            if (!(time >= 0 && Double.isFinite(time))) {
                throw new IllegalArgumentException("Nothing is followed for a time of " + time);
            }
        }
    }

    /**
     * A share that has come to an end by a time.
     *
     * @param share F, 0 to 1
     * @param standardError of it, not below 0
     * @param interval 95 %, within 0 to 1; empty where the share is 0 or 1, which has no limits of this kind
     */
    public record Estimate(double share, double standardError, Optional<Interval> interval) {}

    /**
     * A time at which an end came.
     *
     * @param time since the start
     * @param atRisk n, how many were still followed
     * @param came k, how many came to this end then
     * @param estimate the share from then on
     */
    public record Step(double time, int atRisk, int came, Estimate estimate) {}

    private record Row<C extends Enum<C>>(double time, int atRisk, Map<C, Integer> ends) {

        int came(C end) {
            return ends.getOrDefault(end, 0);
        }

        int all() {
            return ends.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * From those followed, in any order.
     *
     * @param followed at least one
     * @param <C> the ends
     * @throws IllegalArgumentException if there is nobody
     */
    public static <C extends Enum<C>> CumulativeIncidence<C> of(List<Followed<C>> followed) {
        if (followed.isEmpty()) {
            throw new IllegalArgumentException("Nobody was followed, so nothing is known of how they end");
        }
        var endsByTime = new TreeMap<Double, List<C>>();
        followed.forEach(one -> one.end().ifPresent(end -> endsByTime
                .computeIfAbsent(one.time(), time -> new ArrayList<>())
                .add(end)));
        var times = followed.stream().map(Followed::time).sorted().toList();
        var rows = new ArrayList<Row<C>>();
        endsByTime.forEach((time, ends) -> rows.add(new Row<>(time, atRisk(times, time), counted(ends))));
        return new CumulativeIncidence<>(times, List.copyOf(rows));
    }

    private static int atRisk(List<Double> times, double time) {
        return (int) times.stream().filter(one -> one >= time).count();
    }

    private static <C extends Enum<C>> Map<C, Integer> counted(List<C> ends) {
        var counts = new EnumMap<C, Integer>(ends.getFirst().getDeclaringClass());
        ends.forEach(end -> counts.merge(end, 1, Integer::sum));
        return counts;
    }

    /** How many were followed. */
    public int followed() {
        return times.size();
    }

    /** How many were still followed and at no end just before this time. */
    public int atRisk(double time) {
        return atRisk(times, time);
    }

    /**
     * The share that has come to this end by a time.
     *
     * @param end which
     * @param time since the start, in the unit of those followed
     * @return empty past the longest time followed while somebody is still on the way
     */
    public Optional<Estimate> at(C end, double time) {
        return estimate(row -> row.came(end), time);
    }

    /** The share that has come to any end by a time: one less Kaplan and Meier's survivor; empty as {@link #at}. */
    public Optional<Estimate> ofAny(double time) {
        return estimate(Row::all, time);
    }

    /** The curve of one end: each time at which it came, in order; it stands still between them. */
    public List<Step> steps(C end) {
        return rows.stream()
                .filter(row -> row.came(end) > 0)
                .map(row -> new Step(row.time(), row.atRisk(), row.came(end), upTo(row.time(), each -> each.came(end))))
                .toList();
    }

    private Optional<Estimate> estimate(ToIntFunction<Row<C>> came, double time) {
        boolean anyOnTheWay =
                rows.isEmpty() || rows.getLast().all() < rows.getLast().atRisk();
        return time > times.getLast() && anyOnTheWay ? Optional.empty() : Optional.of(upTo(time, came));
    }

    private Estimate upTo(double time, ToIntFunction<Row<C>> came) {
        var past = rows.stream().filter(row -> row.time() <= time).toList();
        double share = share(past, came);
        double error = Math.sqrt(Math.max(0, variance(past, came, share)));
        return new Estimate(Math.min(1, share), error, limits(1 - share, error));
    }

    private static <C extends Enum<C>> double share(List<Row<C>> rows, ToIntFunction<Row<C>> came) {
        double share = 0;
        double before = 1;
        for (var row : rows) {
            share += before * came.applyAsInt(row) / row.atRisk();
            before *= (double) (row.atRisk() - row.all()) / row.atRisk();
        }
        return share;
    }

    private static <C extends Enum<C>> double variance(List<Row<C>> rows, ToIntFunction<Row<C>> came, double total) {
        double variance = 0;
        double share = 0;
        double before = 1;
        for (var row : rows) {
            double n = row.atRisk();
            double all = row.all();
            double these = came.applyAsInt(row);
            share += before * these / n;
            double toCome = total - share;
            variance += all < n ? toCome * toCome * all / (n * (n - all)) : 0;
            variance += before * before * these * (n - these) / (n * n * n) - 2 * toCome * before * these / (n * n);
            before *= (n - all) / n;
        }
        return variance;
    }

    private static Optional<Interval> limits(double left, double error) {
        if (left < ROUNDING || left > 1 - ROUNDING) {
            return Optional.empty();
        }
        double reach = NormalDistribution.STANDARD.quantile(0.975) * error / (left * Math.log(left));
        return Optional.of(new Interval(1 - Math.pow(left, Math.exp(reach)), 1 - Math.pow(left, Math.exp(-reach))));
    }
}
