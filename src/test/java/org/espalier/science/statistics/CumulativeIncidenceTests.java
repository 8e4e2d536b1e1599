package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.statistics.CumulativeIncidence.Estimate;
import org.espalier.science.statistics.CumulativeIncidence.Followed;
import org.espalier.science.statistics.CumulativeIncidence.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CumulativeIncidenceTests {

    private enum End {
        ONE,
        OTHER
    }

    /**
     * Weeks in remission under treatment. Source: Freireich and others, Blood 1963;21:699 (data read in a textbook, the
     * place from memory).
     */
    private static final CumulativeIncidence<End> REMISSION = CumulativeIncidence.of(Stream.concat(
                    Stream.of(6, 6, 6, 7, 10, 13, 16, 22, 23).map(week -> ended(week, End.ONE)),
                    Stream.of(6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35).map(CumulativeIncidenceTests::running))
            .toList());

    /** Two ends that rule each other out; what comes of them was worked out by hand. */
    private static final CumulativeIncidence<End> RIVALS = CumulativeIncidence.of(List.of(
            ended(2, End.ONE),
            ended(3, End.OTHER),
            running(4),
            ended(5, End.ONE),
            ended(6, End.ONE),
            running(7),
            ended(8, End.OTHER),
            ended(9, End.ONE)));

    private static Followed<End> ended(double time, End end) {
        return new Followed<>(time, Optional.of(end));
    }

    private static Followed<End> running(double time) {
        return new Followed<>(time, Optional.empty());
    }

    private static double share(CumulativeIncidence<End> ends, End end, double time) {
        return ends.at(end, time).orElseThrow().share();
    }

    /**
     * Survivor, Greenwood's standard error and log-log limits of the data above, worked out outside this program, to
     * the last digit.
     */
    @ParameterizedTest(name = "week {0}")
    @CsvSource({
        "6, 21, 3, 0.8571, 0.0764, 0.6197, 0.9516",
        "7, 17, 1, 0.8067, 0.0869, 0.5631, 0.9228",
        "10, 15, 1, 0.7529, 0.0963, 0.5032, 0.8894",
        "13, 12, 1, 0.6902, 0.1068, 0.4316, 0.8491",
        "16, 11, 1, 0.6275, 0.1141, 0.3675, 0.8049",
        "22, 7, 1, 0.5378, 0.1282, 0.2678, 0.7468",
        "23, 6, 1, 0.4482, 0.1346, 0.1881, 0.6801"
    })
    void givesTheSurvivorOfOneEnd(
            double week, int atRisk, int came, double survivor, double error, double low, double high) {
        Step step = REMISSION.steps(End.ONE).stream()
                .filter(each -> each.time() == week)
                .findFirst()
                .orElseThrow();
        assertThat(step.atRisk()).isEqualTo(atRisk);
        assertThat(step.came()).isEqualTo(came);
        Estimate estimate = step.estimate();
        assertThat(1 - estimate.share()).isCloseTo(survivor, within(0.00006));
        assertThat(estimate.standardError()).isCloseTo(error, within(0.00006));
        Interval limits = estimate.interval().orElseThrow();
        assertThat(1 - limits.high()).isCloseTo(low, within(0.00006));
        assertThat(1 - limits.low()).isCloseTo(high, within(0.00006));
        assertThat(REMISSION.ofAny(week)).contains(estimate);
    }

    /** 8 of 21 untreated in remission after week 10, standard error 0.106: Cox and Oakes, table 1.1 in a lecture. */
    @Test
    void givesTheBinomialErrorWhereAllAreFollowedToTheEnd() {
        var untreated =
                CumulativeIncidence.of(Stream.of(1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23)
                        .map(week -> ended(week, End.ONE))
                        .toList());
        var atTen = untreated.at(End.ONE, 10).orElseThrow();
        assertThat(atTen.share()).isCloseTo(13 / 21.0, within(1e-12));
        assertThat(atTen.standardError()).isCloseTo(0.106, within(0.0005));
    }

    /** By hand, at the times at which each came. */
    @Test
    void sharesOutTwoEndsThatRuleEachOtherOut() {
        assertThat(RIVALS.steps(End.ONE)).extracting(Step::time).containsExactly(2.0, 5.0, 6.0, 9.0);
        assertThat(RIVALS.steps(End.ONE)).extracting(Step::atRisk).containsExactly(8, 5, 4, 1);
        assertThat(RIVALS.steps(End.OTHER)).extracting(Step::time).containsExactly(3.0, 8.0);
        assertThat(share(RIVALS, End.ONE, 2)).isCloseTo(0.125, within(1e-12));
        assertThat(share(RIVALS, End.ONE, 5)).isCloseTo(0.275, within(1e-12));
        assertThat(share(RIVALS, End.ONE, 6)).isCloseTo(0.425, within(1e-12));
        assertThat(share(RIVALS, End.ONE, 9)).isCloseTo(0.650, within(1e-12));
        assertThat(share(RIVALS, End.OTHER, 3)).isCloseTo(0.125, within(1e-12));
        assertThat(share(RIVALS, End.OTHER, 8)).isCloseTo(0.350, within(1e-12));
        assertThat(RIVALS.ofAny(9).orElseThrow().share()).isCloseTo(1, within(1e-12));
    }

    @Test
    void leavesNobodyOutAtAnyTime() {
        for (double time = 0; time <= 9; time += 0.5) {
            assertThat(share(RIVALS, End.ONE, time) + share(RIVALS, End.OTHER, time))
                    .isCloseTo(RIVALS.ofAny(time).orElseThrow().share(), within(1e-12));
        }
    }

    /** Without anybody still on the way the share is a plain one and its variance F (1 − F)/n. */
    @Test
    void givesAPlainShareWithItsErrorWhereAllCameToAnEnd() {
        var all = new ArrayList<Followed<End>>();
        for (int time = 1; time <= 20; time++) {
            all.add(ended(1 + time / 3, time % 4 == 0 ? End.OTHER : End.ONE));
        }
        var ends = CumulativeIncidence.of(all);
        for (int time = 1; time <= 7; time++) {
            int until = time;
            double share = all.stream()
                            .filter(one -> one.time() <= until && one.end().equals(Optional.of(End.OTHER)))
                            .count()
                    / 20.0;
            var estimate = ends.at(End.OTHER, time).orElseThrow();
            assertThat(estimate.share()).isCloseTo(share, within(1e-12));
            assertThat(estimate.standardError()).isCloseTo(Math.sqrt(share * (1 - share) / 20), within(1e-9));
        }
    }

    /**
     * By the definition of the delta method: the share is moved by each count in turn, numerically, and the counts of
     * one time vary together as drawn from those then followed.
     */
    @Test
    void givesTheVarianceOfTheDeltaMethod() {
        double[] atRisk = {8, 7, 5, 4, 2};
        double[][] hazards = {{1 / 8.0, 0}, {0, 1 / 7.0}, {1 / 5.0, 0}, {1 / 4.0, 0}, {0, 1 / 2.0}};
        double variance = 0;
        for (int i = 0; i < atRisk.length; i++) {
            double[] slope = {slope(hazards, i, 0), slope(hazards, i, 1)};
            for (int a = 0; a < 2; a++) {
                for (int b = 0; b < 2; b++) {
                    double together = (a == b ? hazards[i][a] : 0) - hazards[i][a] * hazards[i][b];
                    variance += slope[a] * slope[b] * together / atRisk[i];
                }
            }
        }
        assertThat(RIVALS.at(End.ONE, 8).orElseThrow().standardError()).isCloseTo(Math.sqrt(variance), within(1e-7));
    }

    private static double slope(double[][] hazards, int time, int end) {
        double step = 1e-6;
        hazards[time][end] += step;
        double above = shareOfFirst(hazards);
        hazards[time][end] -= 2 * step;
        double below = shareOfFirst(hazards);
        hazards[time][end] += step;
        return (above - below) / (2 * step);
    }

    private static double shareOfFirst(double[][] hazards) {
        double share = 0;
        double left = 1;
        for (double[] hazard : hazards) {
            share += left * hazard[0];
            left *= 1 - hazard[0] - hazard[1];
        }
        return share;
    }

    @Test
    void countsThoseStillOnTheWayAtATimeAsFollowedThen() {
        var ends = CumulativeIncidence.of(List.of(running(5), ended(5, End.ONE), running(6)));
        assertThat(ends.atRisk(5)).isEqualTo(3);
        assertThat(ends.atRisk(5.1)).isEqualTo(1);
        assertThat(ends.followed()).isEqualTo(3);
        assertThat(share(ends, End.ONE, 5)).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(share(ends, End.ONE, 4.9)).isZero();
    }

    @Test
    void isSilentPastTheLongestFollowedUnlessAllAreAtAnEnd() {
        assertThat(REMISSION.at(End.ONE, 35)).isPresent();
        assertThat(REMISSION.at(End.ONE, 35.1)).isEmpty();
        assertThat(REMISSION.ofAny(35.1)).isEmpty();
        assertThat(share(RIVALS, End.ONE, 1000)).isCloseTo(0.650, within(1e-12));
        assertThat(CumulativeIncidence.of(List.of(running(1))).at(End.ONE, 2)).isEmpty();
        assertThat(CumulativeIncidence.of(List.of(ended(1, End.ONE), running(1)))
                        .at(End.ONE, 2))
                .isEmpty();
    }

    @Test
    void hasNoLimitsWhereNoneOrAllCame() {
        assertThat(RIVALS.at(End.OTHER, 2).orElseThrow()).isEqualTo(new Estimate(0, 0, Optional.empty()));
        assertThat(RIVALS.ofAny(9).orElseThrow().interval()).isEmpty();
        assertThat(RIVALS.ofAny(9).orElseThrow().standardError()).isCloseTo(0, within(1e-7));
        for (Step step : RIVALS.steps(End.ONE)) {
            assertThat(step.estimate()
                            .interval()
                            .orElseThrow()
                            .contains(step.estimate().share()))
                    .isTrue();
        }
    }

    @Test
    void refusesNobodyAndTimesBeforeTheStart() {
        assertThatIllegalArgumentException().isThrownBy(() -> CumulativeIncidence.<End>of(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> running(-1));
        assertThatIllegalArgumentException().isThrownBy(() -> running(Double.NaN));
    }
}
