package org.espalier.science.forecast;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** How forecasts made after the same number of films did, in the measures of the goals. */
public final class GoalTally {

    /** What is measured. */
    public enum Measure {
        OF_LAST_TWO("ranked score ÷ line through the last two films", tally -> tally.ratio(PlainForecaster.LAST_TWO)),
        OF_ALL("ranked score ÷ line through all films", tally -> tally.ratio(PlainForecaster.ALL)),
        OF_FIXED_RATE("ranked score ÷ fixed published rate", tally -> tally.ratio(PlainForecaster.FIXED_RATE)),
        WITHIN_90("90 % interval covers", tally -> (double) tally.within90 / tally.films),
        WITHIN_50("50 % interval covers", tally -> (double) tally.within50 / tally.films),
        MEAN_PLACE("mean place of what came", tally -> tally.places / tally.films),
        WEEKS("date of neutral, mean error, weeks", tally -> tally.weeks / tally.dates),
        DATE_WITHIN_90("date, 90 % interval covers", tally -> (double) tally.datesWithin90 / tally.limbs),
        BRIER("Brier score, neutral within 36 months", tally -> tally.brier / tally.limbs),
        FOUND("failing limbs found at 5 % false alarms", GoalTally::found),
        SCORE("ranked score, degrees", tally -> tally.score / tally.films),
        SCORE_OF_LAST_TWO("  of the line through the last two films", tally -> tally.plain(PlainForecaster.LAST_TWO)),
        SCORE_OF_ALL("  of the line through all films", tally -> tally.plain(PlainForecaster.ALL)),
        SCORE_OF_FIXED_RATE("  of the fixed published rate", tally -> tally.plain(PlainForecaster.FIXED_RATE));

        private final String text;
        private final ToDoubleFunction<GoalTally> value;

        Measure(String text, ToDoubleFunction<GoalTally> value) {
            this.text = text;
            this.value = value;
        }

        /** What it is called. */
        public String text() {
            return text;
        }
    }

    private static final double FALSE_ALARMS = 0.05;
    private static final double SOON = 24;
    private static final double WITHIN = 36;
    private static final double WEEKS_A_MONTH = 30.4375 / 7;

    private final Map<PlainForecaster, Double> plain = new EnumMap<>(PlainForecaster.class);
    private final List<Double> failing = new ArrayList<>();
    private final List<Double> sound = new ArrayList<>();
    private int films;
    private double score;
    private int within90;
    private int within50;
    private double places;
    private int limbs;
    private double brier;
    private int datesWithin90;
    private int dates;
    private double weeks;

    /** Counts one film that came, forecast from what was known. */
    public void film(TetheredPhysis known, Spread spread, double months, double came) {
        double place = spread.below(came);
        films++;
        score += spread.rankedScore(came);
        within90 += place > 0.05 && place < 0.95 ? 1 : 0;
        within50 += place > 0.25 && place < 0.75 ? 1 : 0;
        places += place;
        for (PlainForecaster forecaster : PlainForecaster.values()) {
            plain.merge(forecaster, forecaster.film(known, months).rankedScore(came), Double::sum);
        }
    }

    /**
     * Counts one limb's date and whether it fails. The date is the one as likely to be too early as too late, given
     * that it comes within 36 months; a date beyond them counts as theirs.
     *
     * @param crossed months since the plate at which it was straight; empty if it never was
     */
    public void limb(TetherForecast forecast, OptionalDouble crossed, boolean fails) {
        double from = forecast.from();
        ReachingTime reaching = forecast.reachingTarget();
        double after = crossed.orElse(Double.POSITIVE_INFINITY) - from;
        double chance = reaching.by(from + WITHIN);
        double end = WITHIN + 0.01;
        double at = Math.clamp(after, 0.01, end);
        limbs++;
        brier += Math.pow(chance - (after <= WITHIN ? 1 : 0), 2);
        datesWithin90 +=
                Math.min(ahead(reaching, 0.05, from), end) <= at && at <= Math.min(ahead(reaching, 0.95, from), end)
                        ? 1
                        : 0;
        if (after <= SOON) {
            dates++;
            double middle = ahead(reaching, Math.clamp(chance / 2, 0.05, 0.95), from);
            weeks += WEEKS_A_MONTH * Math.abs(Math.min(WITHIN, middle) - after);
        }
        (fails ? failing : sound).add(forecast.failing());
    }

    private static double ahead(ReachingTime reaching, double probability, double from) {
        return Math.max(0, reaching.quantile(probability).orElse(Double.POSITIVE_INFINITY) - from);
    }

    private double ratio(PlainForecaster forecaster) {
        return score / films / plain(forecaster);
    }

    private double plain(PlainForecaster forecaster) {
        return plain.getOrDefault(forecaster, 0.0) / films;
    }

    private double found() {
        List<Double> calm = sound.stream().sorted().toList();
        double alarm = calm.get((int) Math.ceil((1 - FALSE_ALARMS) * calm.size()) - 1);
        return (double) failing.stream().filter(chance -> chance > alarm).count() / failing.size();
    }

    /** One measure. */
    public double value(Measure measure) {
        return measure.value.applyAsDouble(this);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%5d films forecast: 90 %% covers %.3f, 50 %% %.3f, mean place %.3f, score %.3f, of the line %.3f",
                films,
                value(Measure.WITHIN_90),
                value(Measure.WITHIN_50),
                value(Measure.MEAN_PLACE),
                value(Measure.SCORE),
                value(Measure.OF_LAST_TWO));
    }
}
