package org.espalier.patient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingTests {

    private static final LocalDate DAY = LocalDate.of(2024, 5, 6);

    @Test
    void refusesASizeOfNothing() {
        assertThatThrownBy(() -> new BodySize(DAY, null, null)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"29.9", "230.1"})
    void refusesAHeightNoChildHas(double centimetres) {
        assertThatThrownBy(() -> new BodySize(DAY, Length.ofCentimetres(centimetres), null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @CsvSource({"0.9", "300.1"})
    void refusesAWeightNoChildHas(double kilograms) {
        assertThatThrownBy(() -> new BodySize(DAY, null, Weight.ofKilograms(kilograms)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void refusesAHeightAndAWeightThatDoNotBelongToOneChild() {
        assertThatThrownBy(() -> new BodySize(DAY, Length.ofCentimetres(112), Weight.ofKilograms(194)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tellsTheIndexOnlyWhenBothWereMeasured() {
        var both = new BodySize(DAY, Length.ofCentimetres(120), Weight.ofKilograms(24));
        assertThat(both.index().orElseThrow().kilogramsPerSquareMetre())
                .isCloseTo(16.6667, org.assertj.core.data.Offset.offset(0.0001));
        assertThat(new BodySize(DAY, Length.ofCentimetres(120), null).index()).isEmpty();
    }

    @Test
    void refusesABoneAgeWithDaysOrBeyondTwenty() {
        assertThatThrownBy(() -> new BoneAge(DAY, new Age(120, 3), BoneAgeMethod.ELBOW))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new BoneAge(DAY, Age.ofMonths(241), BoneAgeMethod.ELBOW))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void wantsANoteForADiagnosisThatIsNotInTheList() {
        assertThatThrownBy(() -> diagnosis(DiagnosisKind.OTHER, null, null, " "))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(diagnosis(DiagnosisKind.OTHER, null, null, " rare ").note()).isEqualTo("rare");
    }

    @Test
    void knowsOnsetForTibiaVaraAlone() {
        assertThatThrownBy(() -> diagnosis(DiagnosisKind.RENAL, Onset.EARLY, null, null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Split at 4; or 0 to 3, 4 to 10, from 11 years: each group's first and last age. */
    @ParameterizedTest
    @CsvSource({"EARLY,0,47", "LATE,48,240", "INFANTILE,0,47", "JUVENILE,48,131", "ADOLESCENT,132,240"})
    void dividesOnsetAsTheSchemeSays(Onset onset, int firstMonth, int lastMonth) {
        assertThat(onset.includes(Age.ofMonths(firstMonth))).isTrue();
        assertThat(onset.includes(Age.ofMonths(lastMonth))).isTrue();
        assertThat(onset.includes(Age.ofMonths(lastMonth + 12))).isFalse();
        assertThat(firstMonth == 0 || !onset.includes(Age.ofMonths(firstMonth - 1)))
                .isTrue();
    }

    @Test
    void refusesAnAgeAtOnsetOutsideItsGroup() {
        assertThatThrownBy(() -> diagnosis(DiagnosisKind.TIBIA_VARA, Onset.JUVENILE, Age.ofYears(2), null))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void showsOnlyWhatStandsAndTheLatestOfIt() {
        var wrong = fact(DAY, 183, null);
        var right = fact(DAY, 138, wrong.id());
        var later = fact(DAY.plusDays(1), 139, null);
        var withdrawn = fact(DAY.plusDays(2), 150, null);
        var withdrawal =
                new Fact<BodySize>(id(), DAY.plusDays(2), null, null, Instant.EPOCH, withdrawn.id(), "another child");
        var history = new History<>(List.of(wrong, later, right, withdrawn, withdrawal));
        assertThat(history.standing()).containsExactly(right, later);
        assertThat(history.latest()).isEqualTo(java.util.Optional.ofNullable(later.finding()));
    }

    private static Fact<BodySize> fact(LocalDate on, double centimetres, @Nullable FactId supersedes) {
        var size = new BodySize(on, Length.ofCentimetres(centimetres), null);
        return new Fact<>(
                id(), on, size, "Test", Instant.EPOCH, supersedes, supersedes == null ? null : "digits swapped");
    }

    private static Diagnosis diagnosis(
            DiagnosisKind kind, @Nullable Onset onset, @Nullable Age onsetAge, @Nullable String note) {
        return new Diagnosis(DAY, kind, AffectedSides.BOTH, onset, onsetAge, note);
    }

    private static FactId id() {
        return new FactId(UUID.randomUUID());
    }
}
