package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.espalier.science.alignment.NormalRange;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class NumberTextTests {

    @ParameterizedTest
    @CsvSource({
        "HKA, 7.23, 7.2° varus",
        "HKA, -7.25, 7.3° valgus",
        "HKA, -0.04, 0.0° straight",
        "BONY_HKA, 17.99, 18.0° varus",
        "aTFA, 5, 5.0° valgus",
        "aTFA, -5, 5.0° varus",
        "JLCA, 4.01, 4.0° opens laterally",
        "JLCA, -1, 1.0° opens medially",
        "JLCA, 0, 0.0° parallel",
        "mLDFA, 94.06, '94.1°, lateral angle'",
        "mMPTA, 72, '72.0°, medial angle'",
        "MAD, -39.06, 39.1 mm medial",
        "MAD, 22.85, 22.9 mm lateral",
        "WBL, -29.53, 29.5 % beyond the medial edge",
        "WBL, -0.04, 0.0 % from the medial edge",
        "WBL, 160.71, 60.7 % beyond the lateral edge",
        "WBL, 40.67, 40.7 % from the medial edge",
        "LIMB_LENGTH, 744.88, 744.9 mm",
        "MDA, 16, 16.0° varus"
    })
    void saysUnitAndDirection(String code, double value, String words) {
        assertThat(NumberText.of(Quantity.ofCode(code).orElseThrow(), value)).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({
        "mLDFA, 94.1, 94.1° varus",
        "mLDFA, 80, 80.0° valgus",
        "mLDFA, 90, 90.0° neutral",
        "mMPTA, 72, 72.0° varus",
        "mMPTA, 93, 93.0° valgus"
    })
    void comparesJointAnglesWithTheNormalRange(String code, double value, String words) {
        var quantity = Quantity.ofCode(code).orElseThrow();
        assertThat(NumberText.of(quantity, value, NormalRange.of(quantity, Age.ofYears(10))))
                .isEqualTo(words);
    }

    @Test
    void writesRangesInWords() {
        assertThat(range(Quantity.MLDFA)).contains("85 to 90°");
        assertThat(range(Quantity.HKA)).contains("1° valgus to 3.2° varus");
        assertThat(range(Quantity.JLCA)).contains("0 to 2° opens laterally");
        assertThat(range(Quantity.MAD)).contains("15 mm medial to 1 mm medial");
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void hasWordsForEveryQuantity(Quantity quantity) {
        assertThat(NumberText.label(quantity)).isNotBlank();
        assertThat(NumberText.of(quantity, 12.34)).matches(".*12[.]3.*");
        assertThat(NumberText.brief(quantity, -12.34)).startsWith("−12.3");
    }

    private static Optional<String> range(Quantity quantity) {
        return NormalRange.of(quantity, Age.ofYears(10)).map(NumberText::of);
    }
}
