package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.espalier.science.forecast.GoalTally.Measure;
import org.espalier.science.forecast.TetheredPhysis.Film;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much better than a line any forecast can be: limbs that go as imagined, the centre's rates known exactly. */
class LimitOfTheDataTests {

    private static final int LIMBS = 1500;
    private static final double[] FILMS = {-0.7, 3.6, 7.2, 10.8};
    private static final double[] HORIZONS = {3, 6, 9, 12};

    /** The better the films, the better a line through two of them, and the less a forecast can add. */
    @ParameterizedTest(name = "{1} films, film error {0} degrees")
    @CsvSource({"0.65, 2, 0.67", "0.65, 3, 0.63", "0.9, 2, 0.61", "0.9, 3, 0.58", "1.2, 2, 0.54", "1.2, 3, 0.52"})
    void scoresThisPartOfTheLine(double filmError, int films, double ofTheLine) {
        CentreRates rates = sharp(CentreRates.published().with(Rate.FILM_ERROR, filmError));
        var limbs = new ImaginedLimbs(rates, 17);
        var tally = new GoalTally();
        double[] months = new double[films + HORIZONS.length];
        for (int i = 0; i < months.length; i++) {
            months[i] = i < films ? FILMS[i] : FILMS[films - 1] + HORIZONS[i - films];
        }
        for (int limb = 0; limb < LIMBS; limb++) {
            TetheredPhysis drawn = limbs.draw(months);
            if (stillHasItsPlate(drawn.films().subList(0, films))) {
                judge(drawn, films, rates, tally);
            }
        }
        assertThat(tally.value(Measure.WITHIN_90)).as("%s", tally).isBetween(0.88, 0.92);
        assertThat(tally.value(Measure.WITHIN_50)).as("%s", tally).isBetween(0.47, 0.53);
        assertThat(tally.value(Measure.MEAN_PLACE)).as("%s", tally).isBetween(0.48, 0.52);
        assertThat(tally.value(Measure.OF_LAST_TWO)).as("%s", tally).isBetween(ofTheLine - 0.02, ofTheLine + 0.02);
    }

    private static boolean stillHasItsPlate(List<Film> films) {
        return films.stream().allMatch(film -> film.degreesLeft() > 0.5);
    }

    private static void judge(TetheredPhysis drawn, int films, CentreRates rates, GoalTally tally) {
        var known = new TetheredPhysis(
                drawn.site(),
                drawn.cause(),
                drawn.sex(),
                drawn.yearsAtPlate(),
                drawn.boneAgeAtPlate(),
                drawn.films().subList(0, films),
                OptionalDouble.empty());
        TetherForecast forecast = TetherForecast.of(known, rates);
        for (Film film : drawn.films().subList(films, drawn.films().size())) {
            tally.film(known, forecast.film(film.months()), film.months(), film.degreesLeft());
        }
    }

    private static CentreRates sharp(CentreRates rates) {
        CentreRates sharp = rates;
        for (Rate rate : Rate.values()) {
            sharp = sharp.with(rate, rates.value(rate), 0);
        }
        return sharp;
    }
}
