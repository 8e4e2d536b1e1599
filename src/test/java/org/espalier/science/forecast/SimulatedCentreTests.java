package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Forecasts of limbs drawn otherwise than the forecast imagines them, with and without limbs of the centre to learn from. */
class SimulatedCentreTests {

    private static final int ASKED = 300;
    private static final int EARLIER = 160;

    /** Published rates do not know a centre's own rates and films: quick and slow ones are missed by so much, or twice that. */
    private static final double UNKNOWN_CENTRE = 0.05;

    private static final double[] HORIZONS = {3, 6, 9, 12};

    static List<Arguments> centres() {
        var centres = new ArrayList<Arguments>();
        for (var centre : List.of(
                SimulatedCentre.MIDDLING, SimulatedCentre.QUICK, SimulatedCentre.SLOW, SimulatedCentre.FAILING)) {
            centres.add(Arguments.of(centre, 0));
            centres.add(Arguments.of(centre, EARLIER));
        }
        return centres;
    }

    /** What was forecast and what came. */
    private static final class Tally {

        private int forecasts;
        private int within90;
        private int within50;
        private double places;
        private double score;
        private double line;

        void add(Spread spread, double came, double lineScore) {
            double place = spread.below(came);
            forecasts++;
            within90 += place > 0.05 && place < 0.95 ? 1 : 0;
            within50 += place > 0.25 && place < 0.75 ? 1 : 0;
            places += place;
            score += spread.rankedScore(came);
            line += lineScore;
        }

        @Override
        public String toString() {
            return String.format(
                    "%5d forecasts: 90 %% covers %.3f, 50 %% %.3f, mean place %.3f, score %.3f, of the line %.3f",
                    forecasts,
                    (double) within90 / forecasts,
                    (double) within50 / forecasts,
                    places / forecasts,
                    score / forecasts,
                    score / line);
        }
    }

    @ParameterizedTest(name = "{0}, {1} earlier limbs")
    @MethodSource("centres")
    void coversWhatComes(SimulatedCentre centre, int earlier) {
        List<TetheredPhysis> past = centre.limbs(earlier, 11).stream()
                .peek(limb -> centre.follow(limb, 40))
                .map(SimulatedCentre.Limb::known)
                .toList();
        CentreRates rates = CentreLearning.learn(past);
        List<SimulatedCentre.Limb> asked = centre.limbs(ASKED, 12);
        asked.forEach(limb -> centre.follow(limb, 40));
        for (int films = 2; films <= 4; films++) {
            Tally tally = tally(asked, films, rates);
            double slack = earlier == 0 ? UNKNOWN_CENTRE : 0;
            assertThat((double) tally.within90 / tally.forecasts)
                    .as("90 percent interval; %s", tally)
                    .isBetween(0.86 - slack, 0.94 + slack);
            assertThat((double) tally.within50 / tally.forecasts)
                    .as("50 percent interval; %s", tally)
                    .isBetween(0.44 - 2 * slack, 0.56 + 2 * slack);
            assertThat(tally.places / tally.forecasts)
                    .as("mean place; %s", tally)
                    .isBetween(0.44 - slack, 0.56 + slack);
        }
    }

    private static Tally tally(List<SimulatedCentre.Limb> limbs, int films, CentreRates rates) {
        var tally = new Tally();
        for (var limb : limbs) {
            if (limb.films().size() < films) {
                continue;
            }
            TetheredPhysis known = limb.known(films);
            TetherForecast forecast = TetherForecast.of(known, rates);
            for (double horizon : HORIZONS) {
                double months = known.lastFilm() + horizon;
                double came = limb.look(months).degreesLeft();
                limb.films().removeLast();
                tally.add(forecast.film(months), came, line(known, months).rankedScore(came));
            }
        }
        return tally;
    }

    /** A line through the last two films, errors of 1 degree. */
    private static Spread line(TetheredPhysis known, double months) {
        var last = known.films().getLast();
        var before = known.films().get(known.films().size() - 2);
        double apart = last.months() - before.months();
        double part = (months - last.months()) / apart;
        double mean = last.degreesLeft() + part * (last.degreesLeft() - before.degreesLeft());
        return Spread.ofNormal(mean, Math.sqrt((1 + part) * (1 + part) + part * part + 1));
    }
}
