package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.espalier.science.quantity.Age;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateTextTests {

    private static final LocalDate BORN = LocalDate.of(2019, 7, 14);

    @Test
    void writesTheMonthAsAWordAndBreaksNoDay() {
        assertThat(DateText.of(BORN)).isEqualTo("14\u2011Jul\u20112019");
        assertThat(DateText.of(LocalDate.of(2021, 9, 3))).isEqualTo("03\u2011Sep\u20112021");
        assertThat(DateText.inWords(BORN)).isEqualTo("14\u00a0July\u00a02019");
    }

    @Test
    void writesADayForAFieldWithTheKeysOfAKeyboard() {
        assertThat(DateText.typed(BORN)).isEqualTo("14-Jul-2019");
    }

    @ParameterizedTest
    @CsvSource({
        "2019-07-14,0d",
        "2019-08-13,30d",
        "2019-08-14,1m",
        "2021-07-13,23m",
        "2021-07-14,2y 0m",
        "2025-12-01,6y 4m"
    })
    void writesAgesInDaysMonthsOrYears(LocalDate on, String text) {
        assertThat(DateText.of(Age.between(BORN, on))).isEqualTo(text);
    }

    @Test
    void writesTheAgeBesideTheDayOfBirth() {
        assertThat(DateText.born(BORN, LocalDate.of(2025, 12, 1))).isEqualTo("14\u2011Jul\u20112019 (6y 4m)");
    }

    @Test
    void writesNoAgeBeforeBirth() {
        assertThat(DateText.born(BORN, BORN.minusDays(1))).isEqualTo("14\u2011Jul\u20112019");
    }
}
