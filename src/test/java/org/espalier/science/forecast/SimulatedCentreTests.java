package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.espalier.science.forecast.GoalTally.Measure;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Forecasts of limbs drawn otherwise than the forecast imagines them, with and without limbs of the centre to learn
 * from.
 */
class SimulatedCentreTests {

    private static final int ASKED = 300;
    private static final int EARLIER = 160;

    /**
     * Published rates do not know a centre's own rates and films: quick and slow ones are missed by so much, or twice
     * that.
     */
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
            GoalTally tally = tally(asked, films, rates);
            double slack = earlier == 0 ? UNKNOWN_CENTRE : 0;
            assertThat(tally.value(Measure.WITHIN_90))
                    .as("90 percent interval; %s", tally)
                    .isBetween(0.86 - slack, 0.94 + slack);
            assertThat(tally.value(Measure.WITHIN_50))
                    .as("50 percent interval; %s", tally)
                    .isBetween(0.44 - 2 * slack, 0.56 + 2 * slack);
            assertThat(tally.value(Measure.MEAN_PLACE))
                    .as("mean place; %s", tally)
                    .isBetween(0.44 - slack, 0.56 + slack);
        }
    }

    private static GoalTally tally(List<SimulatedCentre.Limb> limbs, int films, CentreRates rates) {
        var tally = new GoalTally();
        for (var limb : limbs) {
            if (limb.films().size() < films) {
                continue;
            }
            TetheredPhysis known = limb.known(films);
            TetherForecast forecast = TetherForecast.of(known, rates);
            for (double horizon : HORIZONS) {
                double months = known.lastFilm() + horizon;
                tally.film(known, forecast.film(months), months, limb.wouldRead(months));
            }
        }
        return tally;
    }
}
