package org.espalier.science.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.data.Offset.offset;

import java.util.EnumSet;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChangeLimitTests {

    /** Braun and others, J Orthop Surg Res 2023;18:69, as printed. */
    @ParameterizedTest
    @CsvSource({"MLDFA, 1.06", "MMPTA, 1.29", "HKA, 1.39", "MAD, 3.31", "FEMUR_LENGTH, 4.53", "TIBIA_LENGTH, 3.12"})
    void knowsThePublishedReaderErrors(Quantity quantity, double halfWidth) {
        assertThat(ReaderError.halfWidth95(quantity)).hasValue(halfWidth);
    }

    /** √2 times the published half-width, printed to 0.1. */
    @ParameterizedTest
    @CsvSource({"MLDFA, 1.5", "MMPTA, 1.8", "HKA, 2.0", "MAD, 4.7", "FEMUR_LENGTH, 6.4", "TIBIA_LENGTH, 4.4"})
    void widensForTheDifferenceOfTwoFilms(Quantity quantity, double halfWidth) {
        assertThat(ReaderError.halfWidth95OfChange(quantity)).hasValueCloseTo(halfWidth, offset(0.05));
    }

    /** The rule as the product's clinical rules state it: limit and parts. */
    @ParameterizedTest
    @CsvSource({
        "MLDFA, 5, 1.5, 1.5, 2.1",
        "MMPTA, 5, 1.8, 1.5, 2.3",
        "HKA, 5, 2.0, 1.5, 2.5",
        "MLDFA, 15, 1.5, 4.5, 4.7",
        "MMPTA, 15, 1.8, 4.5, 4.8",
        "HKA, 15, 2.0, 4.5, 4.9",
        "HKA, 0, 2.0, 1.5, 2.5"
    })
    void limitsChangeByReaderAndPositioning(
            Quantity quantity, double flexion, double reader, double positioning, double limit) {
        ChangeLimit change = ChangeLimit.of(quantity, new Angle(flexion)).orElseThrow();
        assertThat(change.reader()).isEqualTo(new Angle(reader));
        assertThat(change.positioning()).isEqualTo(new Angle(positioning));
        assertThat(change.limit()).isEqualTo(new Angle(limit));
    }

    @Test
    void callsAChangeOfTheLimitItselfNotMeasurable() {
        ChangeLimit limit = ChangeLimit.of(Quantity.MLDFA, ChangeLimit.STRAIGHT).orElseThrow();
        assertThat(limit.of(new Angle(80), new Angle(82))).isEqualTo(ChangeLimit.Verdict.NO_MEASURABLE_CHANGE);
        assertThat(limit.of(new Angle(2.1), new Angle(0))).isEqualTo(ChangeLimit.Verdict.NO_MEASURABLE_CHANGE);
        assertThat(limit.of(new Angle(80), new Angle(82.2))).isEqualTo(ChangeLimit.Verdict.CHANGED);
        assertThat(limit.of(new Angle(82.2), new Angle(80))).isEqualTo(ChangeLimit.Verdict.CHANGED);
    }

    @Test
    void hasNoLimitWhereNoneIsEstablished() {
        var established = EnumSet.of(Quantity.MLDFA, Quantity.MMPTA, Quantity.HKA);
        for (Quantity quantity : Quantity.values()) {
            assertThat(ChangeLimit.of(quantity, ChangeLimit.STRAIGHT).isPresent())
                    .as(quantity.code())
                    .isEqualTo(established.contains(quantity));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> ChangeLimit.of(Quantity.HKA, new Angle(-1)));
        assertThatIllegalArgumentException().isThrownBy(() -> ChangeLimit.of(Quantity.HKA, new Angle(61)));
    }

    /** Feucht and others, Knee Surg Sports Traumatol Arthrosc 2021;29:3299, Table 3. */
    @Test
    void knowsTheRangeOfOlderChildren() {
        NormalRange range = NormalRange.of(Quantity.MLDFA, Age.ofYears(5)).orElseThrow();
        assertThat(range.low()).isEqualTo(85);
        assertThat(range.high()).isEqualTo(90);
        assertThat(range.contains(90)).isTrue();
        assertThat(range.contains(90.1)).isFalse();
        assertThat(range.checking().isUnverified()).isFalse();
        assertThat(range.source()).contains("Feucht");
        assertThat(NormalRange.of(Quantity.MLDFA, Age.ofMonths(59))
                        .orElseThrow()
                        .low())
                .isEqualTo(82.8);
        assertThat(NormalRange.of(Quantity.MLDFA, Age.ofMonths(47))).isEmpty();
        assertThat(NormalRange.of(Quantity.MMPTA, Age.ofMonths(95))).isEmpty();
        assertThat(NormalRange.of(Quantity.MLDFA, Age.ofYears(21))).isEmpty();
    }

    @Test
    void marksRangesFromMemory() {
        assertThat(NormalRange.of(Quantity.LDTA, Age.ofYears(12))
                        .orElseThrow()
                        .checking()
                        .isUnverified())
                .isTrue();
    }

    @Test
    void neverHasTwoRangesForOneAgeNorOneForPhysealAngles() {
        for (NormalRange range : NormalRange.all()) {
            for (int month = 0; month < 300; month++) {
                Age age = Age.ofMonths(month);
                assertThat(NormalRange.all().stream()
                                .filter(other -> other.quantity() == range.quantity() && other.isFor(age)))
                        .hasSizeLessThanOrEqualTo(1);
            }
            assertThat(range.quantity()).isNotIn(Quantity.FEMUR_PHYSIS_ANGLE, Quantity.TIBIA_PHYSIS_ANGLE);
            assertThat(range.source()).isNotBlank();
        }
    }
}
