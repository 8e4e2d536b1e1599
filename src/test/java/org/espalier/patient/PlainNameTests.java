package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNameTests {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            João Álvarez|joao alvarez
            O’Marrow-Lee|omarrow lee
            GROẞ Straße|gross strasse
            Łukasz Øster|lukasz oster
            Nguyễn Thị|nguyen thi
            Ольга|ольга
            """)
    void dropsAccentsCapitalsAndPunctuation(String name, String plain) {
        assertThat(PlainName.of(name)).isEqualTo(plain);
    }

    @Test
    void putsTheGivenNamesInitialsFirst() {
        assertThat(PlainName.initials(named("Silva Marques", "Ana Maria"))).isEqualTo("A. M. S. M.");
        assertThat(PlainName.initials(named("Øster-Vale", null))).isEqualTo("Ø. V.");
        assertThat(PlainName.initials(named("’t Hart", "Jan"))).isEqualTo("J. T. H.");
    }

    @Test
    void showsNoMoreThanFourInitials() {
        assertThat(PlainName.initials(named("E F", "A B C D"))).isEqualTo("A. B. C. D.");
    }

    @Test
    void hasAMarkForANameWithoutLetters() {
        assertThat(PlainName.initials(named("123", null))).isEqualTo("?");
    }

    private static ChildData named(String family, @Nullable String given) {
        return new ChildData(family, given, LocalDate.of(2019, 1, 1), null, null);
    }
}
