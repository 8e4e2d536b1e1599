package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values computed outside this program with the formulas named at {@link ForecastScore}; tolerances follow the printed
 * digits.
 */
class ForecastScoreTests {

    private static final double[] PLACES = {0.03, 0.12, 0.21, 0.34, 0.41, 0.48, 0.62, 0.77, 0.85, 0.96};
    private static final double[] CHANCES = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.3};
    private static final boolean[] CAME = {false, false, true, false, true, true, false, true, true, false};

    @ParameterizedTest(name = "{0} from N({1}, {2}²)")
    @CsvSource({
        "0, 0, 1, 0.233695",
        "1, 0, 1, 0.602441",
        "2, 0, 1, 1.452792",
        "-1.5, 0.5, 2, 1.204883",
        "3.1, 2.4, 0.8, 0.416835"
    })
    void ranksNormalForecasts(double came, double mean, double deviation, double printed) {
        assertThat(Spread.ofNormal(mean, deviation).rankedScore(came)).isCloseTo(printed, within(6e-7));
    }

    @Test
    void ranksAFewValues() {
        assertThat(ForecastScore.ranked(new double[] {1, 2, 2.5, 4}, 3)).isCloseTo(0.53125, within(1e-9));
    }

    @Test
    void ranksManyValuesAsTheirSpread() {
        double[] values = Spread.ofNormal(2.4, 0.8).quantiles(levels(2000));
        assertThat(ForecastScore.ranked(values, 3.1)).isCloseTo(0.416835, within(2e-4));
    }

    private static double[] levels(int number) {
        var levels = new double[number];
        Arrays.setAll(levels, i -> (i + 0.5) / number);
        return levels;
    }

    @Test
    void judgesTheEvennessOfPlaces() {
        assertThat(ForecastScore.unevenness(PLACES)).isCloseTo(0.12, within(1e-9));
        assertThat(ForecastScore.unevennessAtTheEnds(PLACES)).isCloseTo(0.1404, within(0.00006));
    }

    @Test
    void judgesChances() {
        assertThat(ForecastScore.brier(CHANCES, CAME)).isCloseTo(0.174, within(1e-9));
        assertThat(ForecastScore.spiegelhalter(CHANCES, CAME)).hasValueCloseTo(-0.2027, within(0.00006));
        assertThat(ForecastScore.twoSided(-0.2027)).isCloseTo(0.8394, within(0.00006));
    }

    @Test
    void isSilentWhereChancesSayNothing() {
        assertThat(ForecastScore.spiegelhalter(new double[] {0, 0.5, 1}, new boolean[] {false, true, false}))
                .isEmpty();
        assertThat(ForecastScore.brier(new double[] {0, 0.5, 1}, new boolean[] {false, true, false}))
                .isCloseTo(1.25 / 3, within(1e-12));
        assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.brier(new double[0], new boolean[0]));
        assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.brier(CHANCES, new boolean[9]));
        assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.spiegelhalter(CHANCES, new boolean[9]));
    }

    /** Small chances that came too often give a positive value, large ones that came too often a negative one. */
    @Test
    void tellsTooSureFromTooTimid() {
        boolean[] always = {true, true, true};
        assertThat(ForecastScore.spiegelhalter(new double[] {0.1, 0.2, 0.3}, always)
                        .orElseThrow())
                .isPositive();
        assertThat(ForecastScore.spiegelhalter(new double[] {0.9, 0.8, 0.7}, always)
                        .orElseThrow())
                .isNegative();
    }

    @Test
    void countsPlacesInEqualBins() {
        assertThat(ForecastScore.histogram(PLACES, 5)).containsExactly(2, 2, 2, 2, 2);
        assertThat(ForecastScore.histogram(new double[] {0, 0.25, 0.5, 0.999, 1}, 4))
                .containsExactly(1, 1, 1, 2);
        assertThat(ForecastScore.histogram(new double[0], 3)).containsExactly(0, 0, 0);
        assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.histogram(PLACES, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> ForecastScore.histogram(new double[] {Double.NaN}, 2));
    }

    /** Forecasts from too little spread lie at both ends, from too much in the middle. */
    @Test
    void showsForecastsThatAreTooNarrowOrTooWide() {
        double[] cameEvenly = Spread.ofNormal(0, 1).quantiles(levels(100));
        var narrow = ForecastScore.histogram(placesIn(0.5, cameEvenly), 4);
        var wide = ForecastScore.histogram(placesIn(2, cameEvenly), 4);
        assertThat(ForecastScore.histogram(placesIn(1, cameEvenly), 4)).containsExactly(25, 25, 25, 25);
        assertThat(narrow[0]).isEqualTo(narrow[3]).isGreaterThan(25);
        assertThat(wide[0]).isEqualTo(wide[3]).isLessThan(25);
    }

    private static double[] placesIn(double deviation, double[] came) {
        return Arrays.stream(came).map(Spread.ofNormal(0, deviation)::below).toArray();
    }

    @Test
    void judgesCoverageExactly() {
        assertThat(ForecastScore.exactCoverage(43, 50, 0.9)).isCloseTo(0.3415, within(0.00006));
    }
}
