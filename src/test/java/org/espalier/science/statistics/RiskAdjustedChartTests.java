package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.espalier.science.statistics.RiskAdjustedChart.Case;
import org.espalier.science.statistics.RiskAdjustedChart.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Weights and paths worked out outside this program with the formulas of Steiner and others, Biostatistics 2000;1:441
 * (abstract read, formulas from memory), to the last digit.
 */
class RiskAdjustedChartTests {

    private static final RiskAdjustedChart CHART = RiskAdjustedChart.DOUBLED_ODDS;
    private static final double[] CHANCES = {0.05, 0.10, 0.05, 0.20, 0.10, 0.05, 0.10, 0.30, 0.05, 0.10};
    private static final boolean[] FAILED = {false, true, false, true, false, false, true, true, false, true};

    private static List<Case> cases() {
        var cases = new ArrayList<Case>();
        for (int i = 0; i < CHANCES.length; i++) {
            cases.add(new Case(CHANCES[i], FAILED[i]));
        }
        return cases;
    }

    /** The first and last are the paper's easiest and hardest patient (risk model from memory). */
    @ParameterizedTest(name = "chance {0}")
    @CsvSource({
        "0.0246, 0.6688, -0.0243",
        "0.05, 0.6444, -0.0488",
        "0.10, 0.5978, -0.0953",
        "0.20, 0.5108, -0.1823",
        "0.50, 0.2877, -0.4055",
        "0.857, 0.0742, -0.6190"
    })
    void weighsEachCaseByTheChanceForetold(double chance, double failure, double success) {
        assertThat(CHART.weight(new Case(chance, true))).isCloseTo(failure, within(0.0001));
        assertThat(CHART.weight(new Case(chance, false))).isCloseTo(success, within(0.0001));
    }

    @Test
    void givesNoWeightToWhatWasCertain() {
        assertThat(CHART.weight(new Case(1, true))).isZero();
        assertThat(CHART.weight(new Case(0, false))).isZero();
    }

    @Test
    void drawsThePathOfTheScore() {
        double[] printed = {0, 0.5978, 0.5490, 1.0599, 0.9646, 0.9158, 1.5136, 1.9444, 1.8956, 2.4934};
        var path = CHART.path(cases());
        assertThat(path).hasSize(printed.length);
        for (int i = 0; i < printed.length; i++) {
            assertThat(path.get(i).score()).isCloseTo(printed[i], within(0.00006));
            assertThat(path.get(i).signals()).isFalse();
        }
    }

    /** Printed as expected less observed, so with the sign turned. */
    @Test
    void drawsFailuresLessThoseExpected() {
        double[] expectedLessObserved = {0.05, -0.85, -0.80, -1.60, -1.50, -1.45, -2.35, -3.05, -3.00, -3.90};
        var path = CHART.path(cases());
        for (int i = 0; i < expectedLessObserved.length; i++) {
            assertThat(path.get(i).observedLessExpected()).isCloseTo(-expectedLessObserved[i], within(1e-9));
        }
    }

    @Test
    void signalsAtTheLimitAndGoesOn() {
        var cases = new ArrayList<>(cases());
        cases.add(new Case(0.10, true));
        cases.addAll(Collections.nCopies(7, new Case(0.10, false)));
        var path = CHART.path(cases);
        assertThat(path.get(10).score()).isCloseTo(2.4934 + 0.5978, within(0.0001));
        assertThat(path.subList(10, 17)).allMatch(Point::signals);
        assertThat(path.get(17).signals()).isFalse();
        assertThat(CHART.path(List.of())).isEmpty();
    }

    /**
     * Average number of cases to a signal at chances of 0.10, with the odds as foretold and doubled: 240.5 and 44.5 for
     * h = 2, 839.8 and 75.2 for h = 3 by a Markov chain, 478 and 59.8 for h = 2.5 simulated, all outside this program.
     * Tolerance: four standard errors of 4000 runs, and 2 % for the simulated ones.
     */
    @ParameterizedTest(name = "h = {0}, true chance {1}")
    @CsvSource({
        "2, 0.1, 240.5",
        "2, 0.181818, 44.5",
        "2.5, 0.1, 478",
        "2.5, 0.181818, 59.8",
        "3, 0.1, 839.8",
        "3, 0.181818, 75.2"
    })
    void signalsAsRarelyAsIsSaid(double limit, double trueChance, double printed) {
        var chart = new RiskAdjustedChart(2, limit);
        double failure = chart.weight(new Case(0.1, true));
        double success = chart.weight(new Case(0.1, false));
        var chance = new Random(1);
        int runs = 4000;
        long cases = 0;
        for (int run = 0; run < runs; run++) {
            for (double score = 0; score < limit; cases++) {
                score = Math.max(0, score + (chance.nextDouble() < trueChance ? failure : success));
            }
        }
        assertThat((double) cases / runs).isCloseTo(printed, within(printed * (4 / Math.sqrt(runs) + 0.02)));
    }

    @Test
    void refusesWhatIsNoChart() {
        assertThatIllegalArgumentException().isThrownBy(() -> new RiskAdjustedChart(1, 2.5));
        assertThatIllegalArgumentException().isThrownBy(() -> new RiskAdjustedChart(2, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Case(1.1, true));
        assertThatIllegalArgumentException().isThrownBy(() -> new Case(Double.NaN, true));
    }
}
