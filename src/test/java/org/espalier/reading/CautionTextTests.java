package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.exposure.FilmConditions;
import org.espalier.science.exposure.LayoutCheck;
import org.espalier.science.exposure.LengthCheck;
import org.espalier.science.exposure.Warning;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class CautionTextTests {

    @ParameterizedTest
    @EnumSource(Caution.Kind.class)
    void saysWhatIsWrongAndWhatToDo(Caution.Kind kind) {
        var text = CautionText.of(new Caution(kind, Side.RIGHT, valuesOf(kind)));
        assertThat(text).hasSizeGreaterThan(40).endsWith(".").doesNotContain("{");
    }

    @ParameterizedTest
    @EnumSource(JointLine.class)
    void namesTheLineMeant(JointLine line) {
        assertThat(CautionText.of(Caution.ofLimb(Caution.Kind.ENDS_EXCHANGED, Side.LEFT, line)))
                .contains(Texts.of(line))
                .doesNotContain(line.name());
    }

    @ParameterizedTest
    @MethodSource("reasons")
    void hasTextForEveryReason(Enum<?> reason) {
        assertThat(Texts.of(reason)).isNotBlank();
    }

    /** Every warning and finding of science is told under its own name, or among what was not recorded. */
    @ParameterizedTest
    @MethodSource("findings")
    void hasACautionForEveryFinding(Enum<?> finding) {
        assertThat(
                        finding.name().endsWith("NOT_RECORDED")
                                ? Texts.text("reading.not-recorded." + finding.name())
                                : Caution.Kind.valueOf(finding.name()).name())
                .isNotBlank();
    }

    static Stream<Enum<?>> findings() {
        return Stream.<Enum<?>[]>of(Warning.Kind.values(), LayoutCheck.Kind.values(), LengthCheck.Finding.values())
                .flatMap(Stream::of);
    }

    private static List<Object> valuesOf(Caution.Kind kind) {
        return switch (kind) {
            case NOT_RECORDED -> List.of("STANCE_NOT_RECORDED", "MARKER_NOT_RECORDED");
            case SCREWS_BEHIND -> List.of(5.0, 3.5, LocalDate.of(2024, 6, 3));
            case FEMUR_SHRANK, TIBIA_SHRANK -> List.of(7.1, LocalDate.of(2024, 6, 3));
            default -> List.of(12.345);
        };
    }

    static Stream<Enum<?>> reasons() {
        return Stream.<Enum<?>[]>of(
                        SignOutcome.Reason.values(),
                        ReadNumber.Absence.values(),
                        CalibrationChoice.values(),
                        Seen.values(),
                        LimbsShown.values(),
                        FilmConditions.Stance.values(),
                        FilmConditions.View.values(),
                        FilmConditions.Technique.values(),
                        FilmConditions.Patella.values(),
                        FilmConditions.Marker.values(),
                        FilmConditions.Ossification.values())
                .flatMap(Stream::of);
    }
}
