package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.espalier.science.forecast.Hypotheses.Kind;
import org.espalier.science.forecast.Hypotheses.Start;
import org.junit.jupiter.api.Test;

/**
 * One limb worked through by hand with the closed forms of conjugate updating (Laird and Ware, Biometrics 1982;38:963)
 * and of the random-coefficient degradation model: lag, wandering, outlying films and classes off. Values computed
 * outside this program; tolerances are half a unit of the last printed digit.
 */
class WorkedForecastTests {

    private static final Offset<Double> FOUR = within(0.00006);
    private static final Offset<Double> LATEST = within(0.001);
    private static final int MONTHS = 400;

    /** A clock that runs evenly. */
    private record Even() implements TetherTime {

        @Override
        public double at(double months) {
            return Math.max(0, months);
        }

        @Override
        public int months() {
            return MONTHS;
        }
    }

    /** A clock that loses three percent a month. */
    private record Slowing() implements TetherTime {

        @Override
        public double at(double months) {
            return -Math.expm1(-0.03 * Math.max(0, months)) / 0.03;
        }

        @Override
        public int months() {
            return MONTHS;
        }
    }

    private static Hypotheses limb(TetherTime time, double wandering) {
        var limb = new Hypotheses(0, 0.9, 0, 1);
        limb.add(Kind.RESPONDS, 1, time, 0, Hypotheses.NOT_FAILED, new Start(10, 3), 0.85, 0.35, wandering);
        limb.observe(0, 10.4);
        limb.observe(3, 8.1);
        limb.observe(6.2, 4.9);
        return limb;
    }

    private static TetherForecast forecast(TetherTime time) {
        return TetherForecast.of(limb(time, 0));
    }

    @Test
    void followsTheStepsOfTheFilter() {
        var limb = new Hypotheses(0, 0.9, 0, 1);
        limb.add(Kind.RESPONDS, 1, new Even(), 0, Hypotheses.NOT_FAILED, new Start(10, 3), 0.85, 0.35, 0);
        limb.observe(0, 10.4);
        assertState(limb, 10.3670, 0.8500, 0.8620, 0.3500);
        limb.observe(3, 8.1);
        assertState(limb, 8.0137, 0.8108, 0.7503, 0.2677);
        limb.observe(6.2, 4.9);
        assertState(limb, 5.0489, 0.8736, 0.7600, 0.1743);
        assertThat(limb.logLikelihood()).isCloseTo(-4.9769, FOUR);
    }

    @Test
    void letsTheRateWander() {
        Hypotheses limb = limb(new Even(), Math.sqrt(0.002));
        assertState(limb, 5.0458, 0.8760, 0.7640, 0.1890);
        assertThat(limb.logLikelihood()).isCloseTo(-4.9926, FOUR);
        Spread nine = TetherForecast.of(limb).degreesLeft(9);
        assertThat(nine.mean()).isCloseTo(2.5930, FOUR);
        assertThat(nine.standardDeviation()).isCloseTo(1.2045, FOUR);
    }

    private static void assertState(Hypotheses limb, double left, double efficiency, double leftSd, double sd) {
        assertThat(limb.left[0]).isCloseTo(left, FOUR);
        assertThat(limb.efficiency[0]).isCloseTo(efficiency, FOUR);
        assertThat(Math.sqrt(limb.leftVariance[0])).isCloseTo(leftSd, FOUR);
        assertThat(Math.sqrt(limb.efficiencyVariance[0])).isCloseTo(sd, FOUR);
    }

    @Test
    void forecastsTheAngle() {
        assertAngle(forecast(new Even()).degreesLeft(9), 2.6029, 1.1680);
        assertAngle(forecast(new Even()).film(9), 2.6029, 1.4745);
        assertAngle(forecast(new Slowing()).degreesLeft(9), 3.0901, 1.0842);
        assertAngle(forecast(new Slowing()).film(9), 3.0901, 1.4090);
    }

    private static void assertAngle(Spread spread, double mean, double deviation) {
        assertThat(spread.mean()).isCloseTo(mean, FOUR);
        assertThat(spread.standardDeviation()).isCloseTo(deviation, FOUR);
    }

    @Test
    void givesTheChanceOfLyingPastTheTarget() {
        TetherForecast even = forecast(new Even());
        TetherForecast slowing = forecast(new Slowing());
        assertThat(new double[] {
                    even.degreesLeft(9).below(0),
                    even.degreesLeft(12).below(0),
                    even.degreesLeft(15).below(0),
                    slowing.degreesLeft(9).below(0),
                    slowing.degreesLeft(12).below(0),
                    slowing.degreesLeft(15).below(0),
                    even.degreesLeft(12).below(-2),
                    even.degreesLeft(15).below(-2),
                    slowing.degreesLeft(12).below(-2),
                    slowing.degreesLeft(15).below(-2)
                })
                .containsExactly(
                        new double[] {0.0129, 0.5043, 0.8894, 0.0022, 0.2353, 0.6731, 0.1154, 0.6164, 0.0181, 0.2559},
                        FOUR);
    }

    @Test
    void givesTheDateOfTheTarget() {
        assertDates(new Even(), 9.6014, 10.8489, 11.9796, 13.4424, 16.5312);
        assertDates(new Slowing(), 10.4499, 12.0940, 13.6591, 15.8015, 20.8443);
        assertThat(forecast(new Even()).reachingTarget(0.02).never()).isCloseTo(0, FOUR);
        assertThat(1 - forecast(new Slowing()).reachingTarget(0.02).never()).isCloseTo(0.9998, FOUR);
    }

    private static void assertDates(TetherTime time, double... printed) {
        ReachingTime reaching = forecast(time).reachingTarget(0.02);
        double[] levels = {0.05, 0.25, 0.5, 0.75, 0.95};
        for (int i = 0; i < levels.length; i++) {
            assertThat(reaching.quantile(levels[i])).hasValueCloseTo(printed[i], within(0.0002));
        }
    }

    @Test
    void isNearlyAsExactWithTheUsualTimes() {
        assertThat(forecast(new Even()).reachingTarget().quantile(0.5)).hasValueCloseTo(11.9796, within(0.05));
        assertThat(forecast(new Slowing()).reachingTarget().quantile(0.95)).hasValueCloseTo(20.8443, within(0.15));
    }

    @Test
    void learnsFromAFurtherFilm() {
        Hypotheses even = limb(new Even(), 0);
        even.observe(9, 1.2);
        assertThat(even.efficiency[0]).isCloseTo(0.9916, FOUR);
        assertThat(Math.sqrt(even.efficiencyVariance[0])).isCloseTo(0.1224, FOUR);
        ReachingTime then = TetherForecast.of(even).reachingTarget(0.02);
        assertThat(then.quantile(0.05)).hasValueCloseTo(9.4775, within(0.0002));
        assertThat(then.quantile(0.5)).hasValueCloseTo(10.7372, within(0.0002));
        assertThat(then.quantile(0.95)).hasValueCloseTo(12.5375, within(0.0002));
        Hypotheses slowing = limb(new Slowing(), 0);
        slowing.observe(9, 1.2);
        assertThat(slowing.efficiency[0]).isCloseTo(1.1005, FOUR);
        assertThat(TetherForecast.of(slowing).reachingTarget(0.02).quantile(0.5))
                .hasValueCloseTo(11.4330, within(0.0002));
    }

    @Test
    void judgesTheForecastOfTheNextFilm() {
        Spread even = forecast(new Even()).film(9);
        assertThat(even.below(1.2)).isCloseTo(0.1707, FOUR);
        assertThat(even.rankedScore(1.2)).isCloseTo(0.8403, FOUR);
        assertThat(-Math.log(even.density(1.2))).isCloseTo(1.7599, FOUR);
        Spread slowing = forecast(new Slowing()).film(9);
        assertThat(slowing.below(1.2)).isCloseTo(0.0899, FOUR);
        assertThat(slowing.rankedScore(1.2)).isCloseTo(1.2126, FOUR);
        assertThat(-Math.log(slowing.density(1.2))).isCloseTo(2.1616, FOUR);
    }

    @Test
    void judgesTheForecastOfTheDate() {
        ReachingTime even = forecast(new Even()).reachingTarget(0.02);
        assertThat(even.rankedScore(10.5)).isCloseTo(0.9373, within(0.0003));
        assertThat(even.rankedScore(12.5)).isCloseTo(0.5108, within(0.0003));
        assertThat(even.by(12) - even.by(9)).isCloseTo(0.4914, within(0.0003));
    }

    @Test
    void judgesTheForecastOfTheDateWhereGrowthSlows() {
        ReachingTime slowing = forecast(new Slowing()).reachingTarget(0.02);
        assertThat(slowing.rankedScore(10.5)).isCloseTo(2.1899, within(0.0005));
        assertThat(slowing.rankedScore(12.5)).isCloseTo(0.8675, within(0.0005));
    }

    @Test
    void givesTheLatestLookOfTheWorkedLimb() {
        assertThat(latestLook(forecast(new Even()), 0.05, 0)).isCloseTo(11.3553, LATEST);
        assertThat(latestLook(forecast(new Even()), 0.10, 0)).isCloseTo(11.8734, LATEST);
        assertThat(latestLook(forecast(new Slowing()), 0.05, 0)).isCloseTo(12.7792, LATEST);
        assertThat(latestLook(forecast(new Slowing()), 0.10, 0)).isCloseTo(13.5014, LATEST);
        assertThat(latestLook(forecast(new Even()), 0.05, 1.5)).isCloseTo(9.855, LATEST);
        Hypotheses even = limb(new Even(), 0);
        even.observe(9, 1.2);
        assertThat(latestLook(TetherForecast.of(even), 0.05, 0)).isCloseTo(11.1978, LATEST);
        Hypotheses slowing = limb(new Slowing(), 0);
        slowing.observe(9, 1.2);
        assertThat(latestLook(TetherForecast.of(slowing), 0.05, 0)).isCloseTo(12.0123, LATEST);
    }

    /** In months since the plate, with no longest time between looks that matters. */
    private static double latestLook(TetherForecast forecast, double risk, double wait) {
        double from = forecast.from();
        return new LookRule(risk, 24)
                .latest(look -> forecast.degreesLeft(look + wait).below(-2), from);
    }

    @Test
    void findsTheOutlyingFilmByBothErrors() {
        var limb = new Hypotheses(0, 1, 0.05, 1);
        limb.add(Kind.RESPONDS, 1, new Even(), 0, Hypotheses.NOT_FAILED, new Start(10, 1), 0.8, 0.2, 0);
        limb.observe(0, 15);
        double usual = 0.95 * Math.exp(-25 / 4.0) / Math.sqrt(2);
        double far = 0.05 * Math.exp(-25 / 26.5) / Math.sqrt(13.25);
        double share = far / (usual + far);
        double mean = 10 + 5 * ((1 - share) / 2 + share / 13.25);
        assertThat(limb.left[0]).isCloseTo(mean, within(1e-12));
        double usualMean = 12.5;
        double farMean = 10 + 5 / 13.25;
        double square = (1 - share) * (0.5 + usualMean * usualMean) + share * ((1 - 1 / 13.25) + farMean * farMean);
        assertThat(limb.leftVariance[0]).isCloseTo(square - mean * mean, within(1e-9));
    }
}
