package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DistributionTests {

    /** Worked example printed beside the 2000 CDC growth charts' data files: weight of a boy of 9 months, in kg. */
    private static final LmsDistribution PRINTED_EXAMPLE = new LmsDistribution(-0.1600954, 9.476500305, 0.11218624);

    @Test
    void givesTheWorkedExampleOfTheSource() {
        assertThat(PRINTED_EXAMPLE.value(-1.645)).isCloseTo(7.90, within(0.005));
        assertThat(PRINTED_EXAMPLE.zScore(9.7)).isCloseTo(0.207, within(0.0005));
        assertThat(100 * NormalDistribution.STANDARD.below(PRINTED_EXAMPLE.zScore(9.7)))
                .isCloseTo(58, within(0.5));
    }

    /** The 3rd and 90th percentile printed in the same table for the same boys. */
    @ParameterizedTest
    @CsvSource({"-1.8807936, 7.700624405", "1.2815516, 10.96017225"})
    void givesPrintedPercentilesToTheLastDigits(double zScore, double weight) {
        assertThat(PRINTED_EXAMPLE.value(zScore)).isCloseTo(weight, within(1e-6));
        assertThat(PRINTED_EXAMPLE.zScore(weight)).isCloseTo(zScore, within(1e-6));
    }

    @Test
    void isLogNormalAtPowerNoughtAndSmoothBesideIt() {
        var nought = new LmsDistribution(0, 16, 0.1);
        assertThat(nought.zScore(16 * Math.exp(0.2))).isCloseTo(2, within(1e-12));
        assertThat(nought.value(2)).isCloseTo(16 * Math.exp(0.2), within(1e-12));
        assertThat(new LmsDistribution(1e-8, 16, 0.1).zScore(20)).isCloseTo(nought.zScore(20), within(1e-6));
        assertThat(new LmsDistribution(1, 16, 0.1).zScore(17.6)).isCloseTo(1, within(1e-12));
    }

    @Test
    void refusesWhatNoDistributionHas() {
        assertThatIllegalArgumentException().isThrownBy(() -> new LmsDistribution(1, 0, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new LmsDistribution(1, 16, Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> PRINTED_EXAMPLE.zScore(0));
        assertThatIllegalArgumentException().isThrownBy(() -> PRINTED_EXAMPLE.value(100));
        assertThatIllegalArgumentException().isThrownBy(() -> new NormalDistribution(0, 0));
    }

    /**
     * Metaphyseal-diaphyseal angles of Feldman and Schoenecker, J Bone Joint Surg Am 1993;75:1602: physiological bowing
     * 9 (SD 3.9), tibia vara 19 (SD 5.7) degrees; the percentages follow from these by arithmetic.
     */
    @Test
    void givesTheOverlapOfPublishedGroups() {
        var physiological = new NormalDistribution(9, 3.9);
        var tibiaVara = new NormalDistribution(19, 5.7);
        assertThat(100 * physiological.above(16)).isCloseTo(3.6, within(0.05));
        assertThat(100 * physiological.above(11)).isCloseTo(30.4, within(0.05));
        assertThat(100 * tibiaVara.below(9)).isCloseTo(4.0, within(0.05));
        assertThat(100 * tibiaVara.below(11)).isCloseTo(8.0, within(0.05));
        assertThat(100 * physiological.above(13)).isCloseTo(15.3, within(0.05));
        assertThat(100 * tibiaVara.below(13)).isCloseTo(14.6, within(0.05));
    }

    /** Hipparchus' own distribution as referee. */
    @Test
    void agreesWithALibraryAlsoFarOut() {
        var library = new org.hipparchus.distribution.continuous.NormalDistribution(3, 2);
        var ours = new NormalDistribution(3, 2);
        for (double value = -9; value <= 15; value += 0.25) {
            assertThat(ours.below(value)).isCloseTo(library.cumulativeProbability(value), within(1e-14));
            assertThat(ours.above(value)).isCloseTo(1 - library.cumulativeProbability(value), within(1e-14));
        }
        assertThat(NormalDistribution.STANDARD.above(10)).isBetween(7.6e-24, 7.7e-24);
    }

    /** The usual normal quantiles, to the digits that are printed everywhere, and back again far out. */
    @Test
    void givesQuantiles() {
        assertThat(NormalDistribution.STANDARD.quantile(0.975)).isCloseTo(1.959964, within(6e-7));
        assertThat(NormalDistribution.STANDARD.quantile(0.5)).isZero();
        assertThat(new NormalDistribution(3, 2).quantile(0.001)).isCloseTo(3 - 2 * 3.090232, within(2e-6));
        assertThat(NormalDistribution.STANDARD.below(NormalDistribution.STANDARD.quantile(1e-9)))
                .isCloseTo(1e-9, within(1e-15));
        assertThatIllegalArgumentException().isThrownBy(() -> NormalDistribution.STANDARD.quantile(0));
        assertThatIllegalArgumentException().isThrownBy(() -> NormalDistribution.STANDARD.quantile(1));
    }
}
