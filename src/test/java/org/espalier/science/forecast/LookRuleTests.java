package org.espalier.science.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.forecast.Hypotheses.Kind;
import org.espalier.science.forecast.Hypotheses.Start;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LookRuleTests {

    private record Even() implements TetherTime {

        @Override
        public double at(double months) {
            return months;
        }

        @Override
        public int months() {
            return 200;
        }
    }

    /**
     * Six degrees left by a film with an error of 0.9, 0.85 degrees a month with 0.35 between limbs, nothing else
     * unsure.
     */
    private static TetherForecast sixDegreesLeft() {
        var limb = new Hypotheses(0, 0.9, 0, 1);
        limb.add(Kind.RESPONDS, 1, new Even(), 0, Hypotheses.NOT_FAILED, new Start(6, 0.9), 0.85, 0.35, 0);
        return TetherForecast.of(limb);
    }

    /** In months from now. */
    private static double latest(double past, double risk, double wait, double longest) {
        return new LookRule(risk, longest).latest(look -> riskOf(look, past, wait), 0);
    }

    private static double riskOf(double look, double past, double wait) {
        return sixDegreesLeft().degreesLeft(look + wait).below(-past);
    }

    @ParameterizedTest(name = "{0} months of wait")
    @CsvSource({"1, 3.8", "3, 1.8"})
    void looksInTimeForTheWait(double wait, double printed) {
        assertThat(latest(2, 0.02, wait, 6)).isCloseTo(printed, within(0.05));
    }

    @Test
    void takesExactlyTheRiskAtTheLatestLook() {
        assertThat(riskOf(latest(2, 0.02, 1, 6), 2, 1)).isCloseTo(0.02, within(0.0005));
    }

    @Test
    void neverWaitsLongerThanTheLongest() {
        assertThat(latest(2, 0.5, 1, 6)).isEqualTo(6);
        assertThat(latest(2, 0.5, 1, 4)).isEqualTo(4);
    }

    @Test
    void looksSoonerForLessRiskAndForLongerWaits() {
        double usual = latest(2, 0.05, 1, 6);
        assertThat(latest(2, 0.02, 1, 6)).isLessThan(usual);
        assertThat(latest(2, 0.05, 2, 6)).isLessThan(usual);
        assertThat(latest(1, 0.05, 1, 6)).isLessThan(usual);
    }

    @Test
    void isDueAtOnceWhenTheRiskIsTakenAlready() {
        assertThat(latest(2, 0.02, 9, 6)).isZero();
    }

    @Test
    void looksBeforeARiskThatFallsAgainLater() {
        double latest = new LookRule(0.02, 6).latest(look -> look > 2 && look < 3 ? 0.05 : 0.01, 0);
        assertThat(latest).isCloseTo(2, within(0.001));
    }

    @Test
    void refusesWhatIsNoRule() {
        assertThatIllegalArgumentException().isThrownBy(() -> new LookRule(0, 6));
        assertThatIllegalArgumentException().isThrownBy(() -> new LookRule(0.02, 0));
    }
}
