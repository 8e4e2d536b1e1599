package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Amounts to the decimals of ISO 4217 and never of two currencies. */
class MoneyTests {

    /** Decimals of each currency: ISO 4217, list one, column "minor unit" (from memory). */
    @ParameterizedTest
    @CsvSource({"EUR, 1.005, 1.01", "EUR, -1.005, -1.01", "EUR, 2.675, 2.68", "JPY, 0.5, 1", "KWD, 1.0005, 1.001"})
    void roundsHalfUpToTheDecimalsOfTheCurrency(String currency, String amount, String rounded) {
        assertThat(Money.of(amount, currency).amount()).isEqualTo(new BigDecimal(rounded));
    }

    @Test
    void twoCurrenciesAreNeverAdded() {
        assertThatThrownBy(() -> Money.of("1", "EUR").plus(Money.of("1", "CHF")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("EUR")
                .hasMessageContaining("CHF");
    }

    @Test
    void aMetalIsNoMoney() {
        assertThatThrownBy(() -> Money.zero(Currency.getInstance("XAU"))).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void partsAddUpToTheWholeAndDifferByNoMoreThanACoin() {
        assertThat(Money.of("100.01", "EUR").split(2)).containsExactly(Money.of("50.01", "EUR"), Money.of("50", "EUR"));
        assertThat(Money.of("10", "EUR").split(3))
                .containsExactly(Money.of("3.34", "EUR"), Money.of("3.33", "EUR"), Money.of("3.33", "EUR"));
        assertThat(Money.of("-0.03", "EUR").split(2))
                .containsExactly(Money.of("-0.02", "EUR"), Money.of("-0.01", "EUR"));
        assertThat(Money.of("5", "JPY").split(2)).containsExactly(Money.of("3", "JPY"), Money.of("2", "JPY"));
    }

    @Test
    void sumsExactlyWhatBinaryNumbersDoNot() {
        var tenCents = List.of(Money.of("0.10", "EUR"), Money.of("0.20", "EUR"));
        assertThat(Money.sum(Currency.getInstance("EUR"), tenCents)).isEqualTo(Money.of("0.30", "EUR"));
    }
}
