package org.espalier.science.statistics;

import java.util.List;
import java.util.Optional;

/**
 * How much more groups differ from a common share than chance alone makes them differ.
 *
 * <pre>
 * φ  = Σ z² / I                                 1 by chance alone; I groups, z of {@link Funnel#standing}
 * φ' = the same, z cut off at its tenths         z below Q(0.1) raised to it, above Q(0.9) lowered to it
 * τ² = (I φ − (I − 1)) / (Σ w − Σ w² / Σ w)      w = 1 / standard error², τ² not below 0
 * </pre>
 *
 * <p>τ is the standard deviation of the groups' true shares. Of few groups all three are guesses.
 *
 * <p>Source: Spiegelhalter, Stat Med 2005;24:1185 (abstract read, formulas from memory). Cutting off at tenths and
 * taking τ² from φ as it is are choices.
 *
 * @param groups I, at least 2
 * @param phi φ, not below 0
 * @param winsorisedPhi φ', not below 0
 * @param tauSquared τ², a share squared, not below 0
 */
public record OverDispersion(int groups, double phi, double winsorisedPhi, double tauSquared) {

    private static final double CUT = 0.1;
    private static final int FEW = 10;

    /**
     * Of groups about the common share of a funnel.
     *
     * @return empty below 2 groups
     */
    public static Optional<OverDispersion> of(Funnel funnel, List<Proportion> groups) {
        if (groups.size() < 2) {
            return Optional.empty();
        }
        var standings = groups.stream().map(funnel::standing).toList();
        double low = Quantile.of(standings, CUT);
        double high = Quantile.of(standings, 1 - CUT);
        var cut = standings.stream().map(z -> Math.clamp(z, low, high)).toList();
        double phi = meanSquare(standings);
        return Optional.of(
                new OverDispersion(groups.size(), phi, meanSquare(cut), Math.max(0, tauSquared(funnel, groups, phi))));
    }

    /** Whether there are fewer than ten groups: to be shown, not to be judged by. */
    public boolean isUncertain() {
        return groups < FEW;
    }

    private static double meanSquare(List<Double> standings) {
        return standings.stream().mapToDouble(z -> z * z).sum() / standings.size();
    }

    private static double tauSquared(Funnel funnel, List<Proportion> groups, double phi) {
        double weights = 0;
        double squares = 0;
        for (Proportion group : groups) {
            double weight = Math.pow(funnel.standardError(group), -2);
            weights += weight;
            squares += weight * weight;
        }
        return (groups.size() * phi - (groups.size() - 1)) / (weights - squares / weights);
    }
}
