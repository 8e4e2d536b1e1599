package org.espalier.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DateEntryTests {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "14 Jul 2019",
                "14-Jul-2019",
                "14\u2011Jul\u20112019",
                "14\u00a0July\u00a02019",
                "14 July 2019",
                "14jul2019",
                "Jul 14, 2019",
                "14/7/2019",
                "7/14/2019",
                "14.07.19",
                "2019-07-14",
                "20190714",
                "14072019",
                "07142019",
                "140719",
                " 14  7  2019 "
            })
    void readsADayHoweverItIsWritten(String typed) {
        assertThat(read(typed)).isEqualTo(new DateEntry.Read(LocalDate.of(2019, 7, 14)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4/7/2019", "04.07.2019", "4-7-19", "04072019"})
    void asksWhichOfTwoDaysIsMeant(String typed) {
        assertThat(read(typed)).isEqualTo(new DateEntry.Ambiguous(LocalDate.of(2019, 7, 4), LocalDate.of(2019, 4, 7)));
    }

    @Test
    void doesNotAskWhenBothReadingsAreTheSameDay() {
        assertThat(read("5/5/2019")).isEqualTo(new DateEntry.Read(LocalDate.of(2019, 5, 5)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "yesterday",
                "2019",
                "7/2019",
                "31/4/2019",
                "29 Feb 2019",
                "14 Ju 2019",
                "14/7/219",
                "1/2/3/4"
            })
    void readsNothingIntoWhatIsNoDay(String typed) {
        assertThat(read(typed)).isEqualTo(new DateEntry.Unreadable());
    }

    @Test
    void takesAYearOfTwoDigitsForTheLatestThatIsNotToCome() {
        assertThat(read("1 Jan 26")).isEqualTo(new DateEntry.Read(LocalDate.of(2026, 1, 1)));
        assertThat(read("1 Jan 27")).isEqualTo(new DateEntry.Read(LocalDate.of(1927, 1, 1)));
    }

    @Test
    void readsMonthsInTheReadersLanguageAndInEnglish() {
        var day = new DateEntry.Read(LocalDate.of(2019, 2, 3));
        assertThat(DateEntry.of("3 fevereiro 2019", Locale.of("pt"), TODAY)).isEqualTo(day);
        assertThat(DateEntry.of("3 february 2019", Locale.of("pt"), TODAY)).isEqualTo(day);
    }

    private static DateEntry read(String typed) {
        return DateEntry.of(typed, Locale.ENGLISH, TODAY);
    }
}
