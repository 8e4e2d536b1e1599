package org.espalier.benchmark;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.SimulatedCentre;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;
import org.espalier.science.statistics.NormalDistribution;

/**
 * Forecasts a second on one core: from two to four films the next film's nineteen quantiles, the date of the target
 * with nineteen quantiles, the chances of failing. Beside it the least a forecast could be, one conjugate update of a
 * straight line with the same quantiles.
 */
final class ForecastBenchmark {

    private static final double ASKED_A_SECOND = 4000;
    private static final int LIMBS = 400;
    private static final int ROUNDS = 12;
    private static final double HORIZON = 6;
    private static final double[] LEVELS =
            IntStream.rangeClosed(1, 19).mapToDouble(i -> i / 20.0).toArray();
    private static final double[] NORMAL = {
        -1.645, -1.282, -1.036, -0.842, -0.674, -0.524, -0.385, -0.253, -0.126, 0, 0.126, 0.253, 0.385, 0.524, 0.674,
        0.842, 1.036, 1.282, 1.645
    };

    private ForecastBenchmark() {}

    public static void main(String[] arguments) {
        List<TetheredPhysis> known = SimulatedCentre.MIDDLING.limbs(LIMBS, 5).stream()
                .map(ForecastBenchmark::filmed)
                .toList();
        double full = aSecond(known, ForecastBenchmark::forecast);
        double line = aSecond(known, ForecastBenchmark::conjugateLine);
        say("forecasts a second, goal " + (int) ASKED_A_SECOND, full);
        say("conjugate straight lines a second", line);
        System.exit(full >= ASKED_A_SECOND ? 0 : 1);
    }

    private static TetheredPhysis filmed(SimulatedCentre.Limb limb) {
        for (int film = 1; film <= 1 + (int) (3 * limb.left(0)) % 3; film++) {
            limb.look(3.5 * film);
        }
        return limb.known();
    }

    private static double aSecond(List<TetheredPhysis> known, ToDoubleFunction<TetheredPhysis> work) {
        double best = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            double sum = known.stream().mapToDouble(work).sum();
            double seconds = (System.nanoTime() - start) / 1e9;
            best = Double.isFinite(sum) ? Math.max(best, known.size() / seconds) : best;
        }
        return best;
    }

    private static double forecast(TetheredPhysis known) {
        TetherForecast forecast = TetherForecast.of(known, CentreRates.published());
        double sum = forecast.film(forecast.from() + HORIZON).quantiles(LEVELS)[9] + forecast.failing();
        var reaching = forecast.reachingTarget();
        for (double level : LEVELS) {
            sum += reaching.quantile(level).orElse(0);
        }
        return sum + reaching.by(forecast.from() + 36);
    }

    private static double conjugateLine(TetheredPhysis known) {
        double left = 10;
        double rate = 0.85;
        double leftVariance = 9;
        double covariance = 0;
        double rateVariance = 0.1225;
        double now = 0;
        for (var film : known.films()) {
            double apart = Math.max(0, film.months()) - now;
            now += apart;
            left -= rate * apart;
            leftVariance += apart * (apart * rateVariance - 2 * covariance);
            covariance -= apart * rateVariance;
            double gain = leftVariance / (leftVariance + 0.81);
            double gainRate = covariance / (leftVariance + 0.81);
            double away = film.degreesLeft() - left;
            left += gain * away;
            rate += gainRate * away;
            rateVariance -= gainRate * covariance;
            covariance *= 1 - gain;
            leftVariance *= 1 - gain;
        }
        double variance = leftVariance + HORIZON * (HORIZON * rateVariance - 2 * covariance);
        double sum = 0;
        for (double z : NORMAL) {
            sum += left - rate * HORIZON + z * Math.sqrt(variance + 0.81) + left / Math.max(rate, 0.01);
        }
        return sum + new NormalDistribution(left - rate * HORIZON, Math.sqrt(variance)).below(0);
    }

    private static void say(String what, double figure) {
        System.out.printf(Locale.ROOT, "%-55s %12.0f%n", what, figure);
    }
}
