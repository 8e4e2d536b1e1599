package org.espalier.outcomes;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.espalier.science.forecast.ForecastScore;
import org.espalier.science.statistics.BlandAltman;
import org.espalier.science.statistics.PairedReadings;
import org.espalier.science.statistics.Proportion;
import org.espalier.science.statistics.RiskAdjustedChart;

/**
 * How what was foretold at one hospital fared.
 *
 * @param judged one forecast of each limb with the film that came later
 * @param chances one plate of each limb with the chance foretold that its target would never be reached, in order of
 *     the day on which that was settled
 * @param unsettled limbs of which it is not known yet
 */
public record Honesty(List<JudgedForecast> judged, List<Chance> chances, int unsettled) {

    private static final int BINS = 10;
    private static final int VALUES = 99;

    /**
     * A chance that was foretold and what came.
     *
     * @param never whether the target was never reached
     */
    public record Chance(LocalDate on, double foretold, boolean never) {}

    /** The limbs' chances on the way, and where the chart stood after each. */
    public record ChartPoint(Chance chance, RiskAdjustedChart.Point point) {}

    /**
     * Mean ranked scores of limbs of which both are known, in degrees; less is nearer.
     *
     * @param forecast of what was foretold
     * @param line of a straight line through the last two films
     */
    public record Ranked(int limbs, double forecast, double line) {}

    public Honesty {
        judged = List.copyOf(judged);
        chances = List.copyOf(chances);
    }

    static Honesty of(List<JudgedForecast> judged, List<PlateCourse> plates) {
        var seen = new HashSet<List<Object>>();
        var limbs = plates.stream()
                .filter(plate -> plate.leftOut().isEmpty() && plate.never().isPresent())
                .sorted(PlateCourse.FIRST)
                .filter(plate -> seen.add(List.of(plate.child(), plate.physis().side())))
                .toList();
        var chances = limbs.stream()
                .flatMap(plate -> plate
                        .neverReached()
                        .map(never ->
                                new Chance(plate.settledOn(), plate.never().getAsDouble(), never))
                        .stream())
                .sorted(Comparator.comparing(Chance::on))
                .toList();
        return new Honesty(judged, chances, limbs.size() - chances.size());
    }

    public boolean isFew() {
        return judged.size() < Results.FEW;
    }

    /** How many were written down before their film was taken. */
    public int beforehand() {
        return (int) judged.stream().filter(JudgedForecast::beforehand).count();
    }

    public Optional<Proportion> inHalf() {
        return judged.isEmpty()
                ? Optional.empty()
                : Optional.of(new Proportion(
                        (int) judged.stream()
                                .filter(one -> one.foretold().holdsIn50(one.came()))
                                .count(),
                        judged.size()));
    }

    public Optional<Proportion> inNineTenths() {
        return judged.isEmpty()
                ? Optional.empty()
                : Optional.of(new Proportion(
                        (int) judged.stream()
                                .filter(one -> one.foretold().holdsIn90(one.came()))
                                .count(),
                        judged.size()));
    }

    /** Films by the chance their forecasts gave to less than what came, tenth by tenth, the lowest first. */
    public List<Integer> places() {
        var places = judged.stream()
                .mapToDouble(one -> one.foretold().place(one.came()))
                .toArray();
        return Arrays.stream(ForecastScore.histogram(places, BINS)).boxed().toList();
    }

    /** Degrees left as foretold less degrees left as they came: + when a limb straightened more. Empty of one limb. */
    public Optional<BlandAltman> bias() {
        var pairs = judged.stream()
                .map(one -> new PairedReadings(one.foretold().middle(), one.came()))
                .toList();
        return pairs.size() < 2 ? Optional.empty() : Optional.of(BlandAltman.of(pairs));
    }

    /** Empty when there is no line to hold them against. */
    public Optional<Ranked> ranked() {
        var both = judged.stream().filter(one -> one.line().isPresent()).toList();
        if (both.isEmpty()) {
            return Optional.empty();
        }
        double forecast = both.stream()
                .mapToDouble(one -> ForecastScore.ranked(one.foretold().equallyLikely(VALUES), one.came()))
                .sum();
        double line = both.stream()
                .mapToDouble(
                        one -> ForecastScore.ranked(new double[] {one.line().getAsDouble()}, one.came()))
                .sum();
        return Optional.of(new Ranked(both.size(), forecast / both.size(), line / both.size()));
    }

    /** Limbs whose target was never reached. */
    public int nevers() {
        return (int) chances.stream().filter(Chance::never).count();
    }

    /** How many were to be expected by what was foretold. */
    public double expectedNevers() {
        return chances.stream().mapToDouble(Chance::foretold).sum();
    }

    public OptionalDouble brier() {
        return chances.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(ForecastScore.brier(foretold(), came()));
    }

    /** A standard normal value if the chances fit; empty where nothing can be told from them. */
    public OptionalDouble spiegelhalter() {
        return chances.isEmpty() ? OptionalDouble.empty() : ForecastScore.spiegelhalter(foretold(), came());
    }

    /** The risk-adjusted chart, in order of date. */
    public List<ChartPoint> chart() {
        var path = RiskAdjustedChart.DOUBLED_ODDS.path(chances.stream()
                .map(one -> new RiskAdjustedChart.Case(one.foretold(), one.never()))
                .toList());
        return IntStream.range(0, chances.size())
                .mapToObj(i -> new ChartPoint(chances.get(i), path.get(i)))
                .toList();
    }

    private double[] foretold() {
        return chances.stream().mapToDouble(Chance::foretold).toArray();
    }

    private boolean[] came() {
        var came = new boolean[chances.size()];
        IntStream.range(0, came.length).forEach(i -> came[i] = chances.get(i).never());
        return came;
    }
}
