package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Peak flow of 17 people by a large and a mini meter, twice each, in l/min. Source: Bland and Altman, Lancet 1986;i:307
 * (data read in a listing; the printed limits of −79.7 and 75.5 come from a rounded SD and are from memory). Values to
 * the last digit they were worked out to.
 */
class AgreementTests {

    private static final double[] LARGE_1 = {
        494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427
    };
    private static final double[] LARGE_2 = {
        490, 397, 512, 401, 470, 611, 415, 431, 638, 429, 420, 633, 275, 492, 165, 372, 421
    };
    private static final double[] MINI_1 = {
        512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451
    };
    private static final double[] MINI_2 = {
        525, 415, 508, 444, 500, 625, 460, 390, 642, 432, 420, 605, 227, 467, 268, 370, 443
    };

    private final BlandAltman meters = BlandAltman.of(pairs(LARGE_1, MINI_1));

    private static List<PairedReadings> pairs(double[] first, double[] second) {
        return IntStream.range(0, first.length)
                .mapToObj(i -> new PairedReadings(first[i], second[i]))
                .toList();
    }

    private static void assertInterval(Interval interval, double low, double high) {
        assertThat(interval.low()).isCloseTo(low, within(0.0001));
        assertThat(interval.high()).isCloseTo(high, within(0.0001));
    }

    @Test
    void tellsLimitsOfAgreementWithTheirIntervals() {
        assertThat(meters.meanDifference()).isCloseTo(-2.1176, within(0.0001));
        assertThat(meters.standardDeviation()).isCloseTo(38.7651, within(0.0001));
        assertInterval(meters.limits(2), -79.6479, 75.4126);
        assertInterval(meters.limits(BlandAltman.NINETY_FIVE), -78.0973, 73.8620);
        assertThat(meters.standardErrorOfMean()).isCloseTo(9.4019, within(0.0001));
        assertInterval(meters.meanInterval(), -22.0488, 17.8135);
        assertThat(meters.standardErrorOfLimit()).isCloseTo(16.2846, within(0.0001));
        assertThat(meters.standardErrorOfLimit(BlandAltman.NINETY_FIVE)).isCloseTo(16.3951, within(0.0001));
        assertInterval(meters.lowerLimitInterval(2), -114.1697, -45.1261);
        assertInterval(meters.upperLimitInterval(2), 40.8908, 109.9344);
    }

    @Test
    void tellsTheRepeatabilityOfEachMeter() {
        Repeatability large = Repeatability.of(pairs(LARGE_1, LARGE_2));
        Repeatability mini = Repeatability.of(pairs(MINI_1, MINI_2));
        assertThat(large.differenceDeviation()).isCloseTo(21.6469, within(0.0001));
        assertThat(mini.differenceDeviation()).isCloseTo(28.1582, within(0.0001));
        assertThat(large.withinSubjectDeviation()).isCloseTo(15.3067, within(0.0001));
        assertThat(mini.withinSubjectDeviation()).isCloseTo(19.9108, within(0.0001));
        assertThat(large.coefficient(2)).isCloseTo(43.2938, within(0.0001));
        assertThat(mini.coefficient(2)).isCloseTo(56.3163, within(0.0001));
    }

    @Test
    void correctsLimitsOfMeansForTheReadingsInThem() {
        Repeatability large = Repeatability.of(pairs(LARGE_1, LARGE_2));
        Repeatability mini = Repeatability.of(pairs(MINI_1, MINI_2));
        double[] largeMean = means(LARGE_1, LARGE_2);
        double[] miniMean = means(MINI_1, MINI_2);
        double ofMeans = BlandAltman.of(pairs(largeMean, miniMean)).standardDeviation();
        assertThat(ofMeans).isCloseTo(33.2041, within(0.0001));
        assertThat(Repeatability.deviationOfSingleReadings(ofMeans, large, mini))
                .isCloseTo(37.6548, within(0.0001));
    }

    private static double[] means(double[] first, double[] second) {
        return pairs(first, second).stream().mapToDouble(PairedReadings::mean).toArray();
    }

    @Test
    void needsTwoPairsAndFiniteReadings() {
        assertThatIllegalArgumentException().isThrownBy(() -> BlandAltman.of(List.of(new PairedReadings(1, 2))));
        assertThatIllegalArgumentException().isThrownBy(() -> BlandAltman.of(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> Repeatability.of(List.of()));
        assertThatIllegalArgumentException().isThrownBy(() -> new PairedReadings(Double.NaN, 1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Interval(2, 1));
    }
}
