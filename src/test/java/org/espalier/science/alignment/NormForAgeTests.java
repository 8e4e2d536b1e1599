package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Offset.offset;

import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormForAgeTests {

    private static Optional<Norm> norm(String study, NormQuantity quantity, NormMethod method, Sex sex, int months) {
        return NormForAge.of(NormStudy.ofCode(study).orElseThrow(), quantity, method, sex, Age.ofMonths(months));
    }

    /** Values as the papers print them; what is read off a curve or remembered says so by its checking. */
    @ParameterizedTest
    @CsvSource({
        "mohd-karim-2015, TIBIOFEMORAL, CLINICAL, MALE, 47, 8.91, 1.17, READ",
        "mohd-karim-2015, TIBIOFEMORAL, CLINICAL, FEMALE, 48, 7.84, 1.35, READ",
        "mathew-2013, TIBIOFEMORAL, CLINICAL, FEMALE, 60, 7.25, 0.64, READ",
        "nigeria-infants, TIBIOFEMORAL, CLINICAL, MALE, 0, -13.2, 3.7, READ",
        "salenius-1975, TIBIOFEMORAL, ANATOMIC_FILM, MALE, 36, 11, 8, MEMORY",
        "salenius-1975, TIBIOFEMORAL, ANATOMIC_FILM, FEMALE, 42, 10, 8, MEMORY"
    })
    void knowsMeanAndSpread(
            String study,
            NormQuantity quantity,
            NormMethod method,
            Sex sex,
            int months,
            double mean,
            double deviation,
            NormalRange.Checking checking) {
        Norm norm = norm(study, quantity, method, sex, months).orElseThrow();
        assertThat(norm.mean()).hasValueCloseTo(mean, offset(1e-9));
        assertThat(norm.standardDeviation()).hasValueCloseTo(deviation, offset(1e-9));
        assertThat(norm.z(mean + deviation)).hasValueCloseTo(1.0, offset(1e-9));
        assertThat(norm.checking()).isEqualTo(checking);
    }

    @ParameterizedTest
    @CsvSource({
        "sabharwal-2009, HKA, MALE, 12, 3.6",
        "sabharwal-2009, HKA, FEMALE, 35, -2.5",
        "sabharwal-2009, HKA, MALE, 84, 0.3",
        "sabharwal-2008, MLDFA, MALE, 18, 95",
        "akhmedov-2013, MLDFA, MALE, 54, 87.8",
        "schlegl-2015, HKA, MALE, 40, -8.04"
    })
    void tellsNoZScoreWhereNoSpreadIsPrinted(String study, NormQuantity quantity, Sex sex, int months, double mean) {
        Norm norm =
                norm(study, quantity, NormMethod.MECHANICAL_FILM, sex, months).orElseThrow();
        assertThat(norm.mean()).hasValueCloseTo(mean, offset(1e-9));
        assertThat(norm.z(90)).isEmpty();
    }

    @Test
    void hasNoNormForAnAgeWithoutOne() {
        assertThat(norm("sabharwal-2009", NormQuantity.HKA, NormMethod.MECHANICAL_FILM, Sex.MALE, 36))
                .isEmpty();
        assertThat(norm("sabharwal-2009", NormQuantity.HKA, NormMethod.MECHANICAL_FILM, Sex.MALE, 83))
                .isEmpty();
        assertThat(norm("salenius-1975", NormQuantity.TIBIOFEMORAL, NormMethod.ANATOMIC_FILM, Sex.MALE, 205))
                .isEmpty();
        assertThat(NormForAge.of(NormQuantity.MMPTA, NormMethod.MECHANICAL_FILM, Sex.MALE, Age.ofYears(5)))
                .isEmpty();
    }

    @Test
    void neverMixesMethodsOrStudies() {
        for (NormMethod method : NormMethod.values()) {
            List<Norm> norms = NormForAge.all(NormQuantity.TIBIOFEMORAL, method, Sex.MALE, Age.ofYears(6));
            assertThat(norms).allSatisfy(norm -> assertThat(norm.method()).isEqualTo(method));
            assertThat(norms).extracting(Norm::study).doesNotHaveDuplicates();
        }
        assertThat(NormForAge.all(NormQuantity.TIBIOFEMORAL, NormMethod.CLINICAL, Sex.MALE, Age.ofYears(6)))
                .extracting(norm -> norm.study().code())
                .containsExactly("mohd-karim-2015", "arazi-2001", "heath-1993", "saini-2010", "iran-2020");
        assertThat(NormForAge.of(NormQuantity.HKA, NormMethod.CLINICAL, Sex.MALE, Age.ofYears(2)))
                .isEmpty();
    }

    @Test
    void drawsTheNeutralBandFromStandingFilmsAloneWhereTheyPrintARange() {
        assertThat(NormalRange.of(Quantity.HKA, Age.ofYears(3)))
                .hasValueSatisfying(range -> assertThat(range.source()).contains("Akhmedov", "sign"));
        assertThat(NormalRange.of(Quantity.HKA, Age.ofMonths(42))).isEmpty();
        assertThat(NormalRange.of(Quantity.MMPTA, Age.ofYears(2)).orElseThrow().high())
                .isEqualTo(97.2);
        assertThat(NormalRange.of(Quantity.ATFA, Age.ofYears(6))).isEmpty();
    }

    /**
     * Femora 424.6 and 421.5, tibiae 340.0 and 322.9 mm: a public-domain film on a radiology site, differences 3.1 and
     * 17.1.
     */
    @Test
    void tellsALengthDifferenceWithItsError() {
        var femora = LengthDifference.ofFemora(new Length(424.6), new Length(421.5));
        var tibiae = LengthDifference.ofTibiae(new Length(340.0), new Length(322.9));
        var both = LengthDifference.ofBoth(femora, tibiae);
        assertThat(femora.difference().millimetres()).isCloseTo(3.1, within(1e-9));
        assertThat(femora.isWithinError()).isTrue();
        assertThat(femora.halfWidth95().millimetres()).isCloseTo(6.4, within(0.051));
        assertThat(tibiae.difference().millimetres()).isCloseTo(17.1, within(1e-9));
        assertThat(tibiae.isWithinError()).isFalse();
        assertThat(tibiae.halfWidth95().millimetres()).isCloseTo(4.4, within(0.051));
        assertThat(both.difference().millimetres()).isCloseTo(20.2, within(1e-9));
        assertThat(both.halfWidth95().millimetres()).isCloseTo(7.8, within(0.051));
    }
}
