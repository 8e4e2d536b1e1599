package org.espalier.science.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTests {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, 360.1, -360.1})
    void refusesWhatIsNoAngleNamingTheValue(double degrees) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Angle(degrees))
                .withMessageContaining(String.valueOf(degrees));
    }

    @Test
    void keepsAnglesAtBothEnds() {
        assertThat(new Angle(360).minus(new Angle(360))).isEqualTo(Angle.ZERO);
        assertThat(new Angle(-360).abs().degrees()).isEqualTo(360);
        assertThat(Angle.ofRadians(Math.PI / 6).degrees()).isCloseTo(30, within(1e-12));
        assertThat(new Angle(10).isCloseTo(new Angle(10.5), new Angle(0.5))).isTrue();
        assertThat(new Angle(10).isCloseTo(new Angle(10.6), new Angle(0.5))).isFalse();
    }

    @Test
    void refusesWhatIsNoLengthWeightOrPoint() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Length(Double.NaN));
        assertThatIllegalArgumentException().isThrownBy(() -> new Weight(0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Weight(500.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new PixelPoint(Double.NaN, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new PlanePoint(0, Double.NEGATIVE_INFINITY));
    }

    @Test
    void countsCompletedMonthsByTheCalendar() {
        Age age = Age.between(LocalDate.of(2019, 7, 14), LocalDate.of(2025, 11, 25));
        assertThat(age).isEqualTo(new Age(76, 11));
        assertThat(age.years()).isEqualTo(6);
        assertThat(age.months()).isEqualTo(4);
        assertThat(Age.between(LocalDate.of(2019, 7, 14), LocalDate.of(2025, 7, 13))
                        .years())
                .isEqualTo(5);
        assertThat(Age.between(LocalDate.of(2019, 7, 14), LocalDate.of(2025, 7, 14)))
                .isEqualTo(Age.ofYears(6));
    }

    @Test
    void completesAMonthThatIsTooShortOnTheFirstOfTheNext() {
        LocalDate lastOfJanuary = LocalDate.of(2023, 1, 31);
        assertThat(Age.between(lastOfJanuary, LocalDate.of(2023, 2, 28)).completedMonths())
                .isZero();
        assertThat(Age.between(lastOfJanuary, LocalDate.of(2023, 3, 1)).completedMonths())
                .isEqualTo(1);
        LocalDate leapDay = LocalDate.of(2020, 2, 29);
        assertThat(Age.between(leapDay, LocalDate.of(2021, 2, 28)).years()).isZero();
        assertThat(Age.between(leapDay, LocalDate.of(2021, 3, 1)).years()).isEqualTo(1);
    }

    @Test
    void refusesADayBeforeBirth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Age.between(LocalDate.of(2020, 1, 2), LocalDate.of(2020, 1, 1)))
                .withMessageContaining("2020-01-01");
    }

    @Test
    void readsSidesFromTheirLetter() {
        for (Side side : Side.values()) {
            assertThat(Side.ofLetter(side.letter())).contains(side);
            assertThat(side.opposite().opposite()).isEqualTo(side);
        }
        assertThat(Side.ofLetter("right")).isEmpty();
    }

    @Test
    void comesBackFromADecimalAgeToTheDay() {
        assertThat(Age.ofDecimalYears(14)).isEqualTo(Age.ofYears(14));
        assertThat(Age.ofDecimalYears(0)).isEqualTo(Age.ofYears(0));
        for (Age age : new Age[] {new Age(7, 29), new Age(100, 30), new Age(151, 1)}) {
            assertThat(Age.ofDecimalYears(age.decimalYears())).isEqualTo(age);
        }
    }
}
