package org.espalier.science.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Weight;
import org.espalier.science.statistics.LmsDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class BmiReferenceTests {

    /** The parameters are kept to 5 and 6 of the 9 decimals printed; at the 97th percentile that moves 0.0003 kg/m². */
    private static final double ROUNDED = 0.0005;

    /** The 3rd, 5th, 85th, 95th and 97th percentiles printed in the source's own file beside the parameters. */
    @ParameterizedTest
    @CsvSource({
        "MALE, 24, 14.520953329, 14.737319472, 18.162194733, 19.338010618, 19.859858115",
        "MALE, 120.5, 13.966731092, 14.218655083, 19.390411298, 22.154092383, 23.726960857",
        "MALE, 180.5, 16.208441335, 16.55481067, 23.451170652, 26.83688026, 28.635750759",
        "MALE, 240, 18.702737405, 19.120551107, 27.046068183, 30.589642847, 32.36536586",
        "FEMALE, 24, 14.147346696, 14.397870893, 18.018205792, 19.10623522, 19.564109584",
        "FEMALE, 120.5, 13.740743496, 14.035354051, 19.983997788, 22.982577328, 24.603327787",
        "FEMALE, 180.5, 15.937854728, 16.309736017, 24.045025332, 28.123691687, 30.385201795",
        "FEMALE, 240, 17.430310748, 17.820090457, 26.478719662, 31.764743113, 35.056750932"
    })
    void givesThePrintedPercentiles(Sex sex, double months, double p3, double p5, double p85, double p95, double p97) {
        LmsDistribution distribution = BmiReference.distribution(sex, months);
        assertThat(distribution.value(-1.8807936)).isCloseTo(p3, within(ROUNDED));
        assertThat(distribution.value(-1.6448536)).isCloseTo(p5, within(ROUNDED));
        assertThat(distribution.value(1.0364334)).isCloseTo(p85, within(ROUNDED));
        assertThat(distribution.value(1.6448536)).isCloseTo(p95, within(ROUNDED));
        assertThat(distribution.value(1.8807936)).isCloseTo(p97, within(ROUNDED));
    }

    /** A slip of the pen anywhere in the table would break the smoothness of its columns. */
    @ParameterizedTest
    @EnumSource
    void hasSmoothColumns(Sex sex) {
        List<PrintedTable.Row> months = PrintedTable.of(BmiReference.class, "bmi-for-age-2000.csv").rows().stream()
                .filter(row -> row.text("sex").equals(sex.name()))
                .filter(row -> row.number("months") % 1 == 0.5)
                .toList();
        assertThat(months)
                .extracting(row -> row.number("months"))
                .startsWith(24.5)
                .endsWith(240.5);
        assertThat(months).hasSize(217);
        for (String column : List.of("l", "m", "s")) {
            double lastDigit = column.equals("s") ? 1e-6 : 1e-5;
            double[] values =
                    months.stream().mapToDouble(row -> row.number(column)).toArray();
            double[] fourth = differences(differences(differences(differences(values))));
            for (double difference : fourth) {
                assertThat(Math.abs(difference)).isLessThan(16 * lastDigit);
            }
        }
    }

    private static double[] differences(double[] values) {
        double[] differences = new double[values.length - 1];
        for (int i = 0; i < differences.length; i++) {
            differences[i] = values[i + 1] - values[i];
        }
        return differences;
    }

    @Test
    void interpolatesBetweenTheMiddlesOfTwoMonths() {
        double earlier = BmiReference.distribution(Sex.MALE, 99.5).median();
        double later = BmiReference.distribution(Sex.MALE, 100.5).median();
        assertThat(BmiReference.distribution(Sex.MALE, 99.75).median())
                .isCloseTo(0.75 * earlier + 0.25 * later, within(1e-12));
    }

    @Test
    void tellsWhereAChildStands() {
        BodyMassIndex index = BodyMassIndex.of(new Weight(30), Length.ofCentimetres(125));
        assertThat(index.kilogramsPerSquareMetre()).isCloseTo(19.2, within(1e-12));
        Standing standing =
                BmiReference.standing(Sex.MALE, Age.ofYears(8), index).orElseThrow();
        assertThat(standing.centile()).isBetween(90.0, 95.0);
        assertThat(standing.isBeyondPrintedCentiles()).isFalse();
        Standing heavy = BmiReference.standing(Sex.MALE, Age.ofYears(8), new BodyMassIndex(30))
                .orElseThrow();
        assertThat(heavy.centile()).isGreaterThan(97);
        assertThat(heavy.isBeyondPrintedCentiles()).isTrue();
    }

    @Test
    void holdsFromTwoToTwentyYears() {
        var index = new BodyMassIndex(16);
        assertThat(BmiReference.standing(Sex.FEMALE, new Age(23, 30), index)).isEmpty();
        assertThat(BmiReference.standing(Sex.FEMALE, Age.ofYears(2), index)).isPresent();
        assertThat(BmiReference.standing(Sex.FEMALE, Age.ofYears(20), index)).isPresent();
        assertThat(BmiReference.standing(Sex.FEMALE, new Age(240, 1), index)).isEmpty();
    }

    @Test
    void refusesAnIndexNoChildHas() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BodyMassIndex.of(new Weight(30), Length.ofMillimetres(125)));
        assertThatIllegalArgumentException().isThrownBy(() -> new BodyMassIndex(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BodyMassIndex.of(new Weight(30), Length.ofMillimetres(0)));
    }
}
