package org.espalier.outcomes.ui;

import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.cost.Cell;
import org.espalier.kit.Texts;
import org.espalier.science.statistics.CumulativeIncidence.Estimate;
import org.espalier.science.statistics.Interval;
import org.espalier.science.statistics.Proportion;

/** Shares, counts and degrees in words, each with its uncertainty. */
final class OutcomeText {

    private OutcomeText() {}

    /** So many of so many, with the score interval. */
    static String of(Optional<Proportion> share) {
        return share.map(one -> share(one, one.wilson())).orElseGet(() -> Texts.text("outcomes.of-none"));
    }

    /** The same with the exact interval. */
    static String exact(Optional<Proportion> share) {
        return share.map(one -> share(one, one.exact())).orElseGet(() -> Texts.text("outcomes.of-none"));
    }

    private static String share(Proportion share, Interval interval) {
        return Texts.text("outcomes.share", share.count(), share.of(), share.share(), interval.low(), interval.high());
    }

    static String of(Estimate estimate) {
        return estimate.interval()
                .map(interval -> Texts.text("outcomes.estimate", estimate.share(), interval.low(), interval.high()))
                .orElseGet(() -> Texts.text("outcomes.estimate.bare", estimate.share()));
    }

    static String percent(Interval interval) {
        return Texts.text("outcomes.percents", interval.low(), interval.high());
    }

    static String percent(double share) {
        return Texts.text("outcomes.percent", share);
    }

    static String of(Cell cell) {
        return switch (cell) {
            case Cell.Told(int count) -> String.valueOf(count);
            case Cell.Hidden() -> Texts.text("outcomes.hidden");
        };
    }

    /** Past the target or short of it. */
    static String past(OptionalDouble degrees) {
        if (degrees.isEmpty()) {
            return Texts.text("outcomes.not-filmed");
        }
        return Texts.text(
                degrees.getAsDouble() < 0 ? "outcomes.short-by" : "outcomes.past-by", Math.abs(degrees.getAsDouble()));
    }

    static String days(Optional<Double> days) {
        return days.map(one -> Texts.text("outcomes.days", one)).orElseGet(() -> Texts.text("outcomes.none"));
    }
}
