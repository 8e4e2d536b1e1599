package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OneSlipTests {

    @ParameterizedTest
    @ValueSource(strings = {"12345", "21345", "1345", "123456", "012345", "12x45", "12354", "1234", "x2345"})
    void meetsWhatOneSlipAway(String meant) {
        assertThat(matches("12345", meant)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"12453", "123", "54321", "1234567", "x234x", ""})
    void meetsNothingFurtherAway(String meant) {
        assertThat(matches("12345", meant)).isFalse();
    }

    @Test
    void takesSignsAsTheyAre() {
        assertThat(matches("A.1*", "A.1*")).isTrue();
        assertThat(matches("(", "(")).isTrue();
        assertThat(matches("\\", "\\")).isTrue();
    }

    @Test
    void meetsOneCharacterAloneButNotNothing() {
        assertThat(matches("7", "8")).isTrue();
        assertThat(matches("7", "")).isFalse();
    }

    private static boolean matches(String typed, String meant) {
        return Pattern.matches(OneSlip.pattern(typed), meant);
    }
}
