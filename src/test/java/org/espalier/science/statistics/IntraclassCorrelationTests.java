package org.espalier.science.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Six things read by four judges. Source: Shrout and Fleiss, Psychol Bull 1979;86:420 (data and results from memory).
 */
class IntraclassCorrelationTests {

    private static final double PRINTED = 0.0001;

    private final VarianceTable table = VarianceTable.of(List.of(
            new double[] {9, 2, 5, 8},
            new double[] {6, 1, 3, 2},
            new double[] {8, 4, 6, 8},
            new double[] {7, 1, 2, 6},
            new double[] {10, 5, 6, 9},
            new double[] {6, 2, 4, 7}));

    @Test
    void splitsTheVariance() {
        assertThat(table.between()).isCloseTo(11.2417, within(PRINTED));
        assertThat(table.within()).isCloseTo(6.2639, within(PRINTED));
        assertThat(table.betweenReaders()).isCloseTo(32.4861, within(PRINTED));
        assertThat(table.residual()).isCloseTo(1.0194, within(PRINTED));
    }

    @Test
    void tellsEveryFormWithItsInterval() {
        assertForm(IntraclassCorrelation.oneWay(table).orElseThrow(), 0.1657, -0.1329, 0.7226);
        assertForm(IntraclassCorrelation.agreement(table).orElseThrow(), 0.2898, 0.0188, 0.7611);
        assertForm(IntraclassCorrelation.consistency(table).orElseThrow(), 0.7148, 0.3425, 0.9459);
        assertThat(table.between() / table.residual()).isCloseTo(11.0272, within(PRINTED));
        assertThat(IntraclassCorrelation.degreesOfFreedom(table, 0.2898)).isCloseTo(4.7851, within(0.002));
        assertThat(IntraclassCorrelation.oneWayOfMeans(table).orElseThrow().value())
                .isCloseTo(0.4428, within(PRINTED));
        assertThat(IntraclassCorrelation.agreementOfMeans(table).orElseThrow().value())
                .isCloseTo(0.6201, within(PRINTED));
        assertThat(IntraclassCorrelation.consistencyOfMeans(table).orElseThrow().value())
                .isCloseTo(0.9093, within(PRINTED));
    }

    private static void assertForm(IntraclassCorrelation icc, double value, double low, double high) {
        assertThat(icc.value()).isCloseTo(value, within(PRINTED));
        assertThat(icc.interval().orElseThrow().low()).isCloseTo(low, within(PRINTED));
        assertThat(icc.interval().orElseThrow().high()).isCloseTo(high, within(PRINTED));
    }

    @Test
    void tellsTheErrorOfAReadingAndTheSmallestChange() {
        assertThat(table.standardErrorOfAgreement()).isCloseTo(2.5028, within(PRINTED));
        assertThat(table.standardErrorOfConsistency()).isCloseTo(1.0097, within(PRINTED));
        assertThat(table.smallestChange95()).isCloseTo(6.9373, within(0.0002));
    }

    @Test
    void hasNoIntervalWhenReadersAgreeWhollyAndNoValueWhenNothingVaries() {
        VarianceTable agreed = VarianceTable.of(List.of(new double[] {1, 1}, new double[] {3, 3}));
        assertThat(IntraclassCorrelation.agreement(agreed).orElseThrow())
                .isEqualTo(new IntraclassCorrelation(1, Optional.empty()));
        VarianceTable flat = VarianceTable.of(List.of(new double[] {2, 2}, new double[] {2, 2}));
        assertThat(IntraclassCorrelation.agreement(flat)).isEmpty();
    }

    @Test
    void needsTheSameReadersForEveryThing() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> VarianceTable.of(List.of(new double[] {1, 2}, new double[] {1})));
        assertThatIllegalArgumentException().isThrownBy(() -> VarianceTable.of(List.of(new double[] {1, 2})));
        assertThatIllegalArgumentException().isThrownBy(() -> VarianceTable.of(List.of()));
    }
}
