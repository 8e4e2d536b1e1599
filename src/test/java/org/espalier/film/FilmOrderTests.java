package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FilmOrderTests {

    @Test
    void saysWhyNoFilmIsNeeded() {
        assertThatThrownBy(() -> new FilmWish.NoFilm(" ")).isInstanceOf(IllegalArgumentException.class);
        assertThat(new FilmWish.NoFilm(" straight ").reason()).isEqualTo("straight");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 151})
    void refusesALiftNobodyStandsOn(double millimetres) {
        assertThatThrownBy(() -> new FilmWish.Lift(Side.LEFT, Length.ofMillimetres(millimetres)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "1000000", "1.2345"})
    void refusesADoseNoMachineShows(String value) {
        assertThatThrownBy(() -> new DoseAreaProduct(new BigDecimal(value), DoseAreaProduct.Unit.CGY_CM2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void endsByEverythingButARejectedExposure() {
        assertThat(new FilmHappening.Rejected(FilmHappening.RejectReason.MOVED, null).isEnd())
                .isFalse();
        assertThat(new FilmHappening.Taken(null).isEnd()).isTrue();
        assertThat(new FilmHappening.NotTaken("fever").isEnd()).isTrue();
        assertThat(new FilmHappening.Withdrawn("straight").isEnd()).isTrue();
    }

    @Test
    void saysWhyAFilmWasNotTaken() {
        assertThatThrownBy(() -> new FilmHappening.NotTaken(" ")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new FilmHappening.Withdrawn("")).isInstanceOf(IllegalArgumentException.class);
    }
}
