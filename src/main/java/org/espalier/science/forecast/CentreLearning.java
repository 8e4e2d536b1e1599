package org.espalier.science.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A centre's rates from its own limbs: the most probable ones, with published rates as what was believed before.
 *
 * <pre>
 * maximise  ½ Σ over limbs ln p(films | rates) − Σ over rates (moved from published)² / (2 spread²)
 * </pre>
 *
 * <p>One rate after the other is moved to the top of the parabola through three points, over and over until that brings
 * next to nothing; what is left of its spread follows from the parabola's bend. Few limbs leave the published rates
 * nearly as they are; none, exactly.
 */
public final class CentreLearning {

    /** At most; it is over when one more brings next to nothing. */
    private static final int SWEEPS = 8;

    /** So much logarithm of probability over all rates is next to nothing. */
    private static final double NOTHING = 0.5;

    /**
     * How much of what a limb says is believed: two limbs of a child are alike (correlation of the rate 0.4 to 0.5),
     * films of one limb follow one another, and no model is right. Judged.
     */
    private static final double TRUST = 0.5;

    /** Half the distance of the outer points, in parts of the published spread. */
    private static final double REACH = 0.4;

    /** The furthest that one step goes, in parts of the published spread. */
    private static final double LONGEST = 1;

    private final List<TetheredPhysis> limbs;
    private final CentreRates published = CentreRates.published();
    private CentreRates rates;
    private final double[] likelihoods;
    private final double[] left = new double[Rate.values().length];

    private CentreLearning(List<TetheredPhysis> limbs, CentreRates start) {
        this.limbs = limbs;
        rates = start;
        likelihoods = new double[limbs.size()];
    }

    /**
     * Learns from limbs.
     *
     * @param limbs limbs with their films while the plate was in; those with fewer than two films say nothing
     * @return the centre's rates
     */
    public static CentreRates learn(List<TetheredPhysis> limbs) {
        return learn(limbs, CentreRates.published());
    }

    /**
     * Learns from limbs, beginning at rates learnt before, which saves time and changes nothing else that matters.
     *
     * @param limbs limbs with their films while the plate was in
     * @param start rates of the same centre at an earlier time
     */
    public static CentreRates learn(List<TetheredPhysis> limbs, CentreRates start) {
        List<TetheredPhysis> telling =
                limbs.stream().filter(limb -> limb.films().size() > 1).toList();
        return telling.isEmpty() ? CentreRates.published() : new CentreLearning(telling, start).learn();
    }

    private CentreRates learn() {
        rates = withoutSpreads(rates);
        accept(rates, Optional.empty());
        double gain = Double.MAX_VALUE;
        for (int sweep = 0; sweep < SWEEPS && gain > NOTHING; sweep++) {
            gain = Arrays.stream(Rate.values()).mapToDouble(this::improve).sum();
        }
        CentreRates learnt = rates;
        for (Rate rate : Rate.values()) {
            learnt = learnt.with(rate, rates.value(rate), left[rate.ordinal()]);
        }
        return learnt.learntFrom(limbs.size());
    }

    private static CentreRates withoutSpreads(CentreRates from) {
        CentreRates sharp = from;
        for (Rate rate : Rate.values()) {
            sharp = sharp.with(rate, from.value(rate), 0);
        }
        return sharp;
    }

    /** Moves one rate and says what that gained. */
    private double improve(Rate rate) {
        double spread = published.spread(rate);
        double step = REACH * spread;
        double here = objective(rate, 0);
        double up = objective(rate, step);
        double down = objective(rate, -step);
        double bend = (up - 2 * here + down) / (step * step);
        double slope = (up - down) / (2 * step);
        left[rate.ordinal()] = Math.min(spread, bend < 0 ? 1 / Math.sqrt(-bend) : spread);
        double by = bend < 0 ? -slope / bend : Math.signum(slope) * step;
        by = Math.clamp(by, -LONGEST * spread, LONGEST * spread);
        double there = objective(rate, by);
        double best = Math.max(Math.max(there, here), Math.max(up, down));
        if (best > here) {
            double move = best == there ? by : best == up ? step : -step;
            accept(rates.moved(rate, move), rate.cause());
        }
        return best - here;
    }

    /** The gain in logarithm of probability when one rate is moved. */
    private double objective(Rate rate, double by) {
        CentreRates moved = by == 0 ? rates : rates.moved(rate, by);
        double away = moved.away(rate, published) / published.spread(rate);
        double gain = -away * away / 2;
        if (by == 0) {
            return gain;
        }
        for (int i = 0; i < limbs.size(); i++) {
            if (concerns(limbs.get(i), rate.cause())) {
                gain += TRUST * (likelihood(limbs.get(i), moved) - likelihoods[i]);
            }
        }
        return gain;
    }

    private void accept(CentreRates better, Optional<Cause> cause) {
        rates = better;
        for (int i = 0; i < limbs.size(); i++) {
            if (concerns(limbs.get(i), cause)) {
                likelihoods[i] = likelihood(limbs.get(i), better);
            }
        }
    }

    private static boolean concerns(TetheredPhysis limb, Optional<Cause> cause) {
        return cause.isEmpty() || limb.cause() == cause.get();
    }

    private static double likelihood(TetheredPhysis limb, CentreRates rates) {
        return PriorHypotheses.afterFilms(limb, rates).logLikelihood();
    }
}
