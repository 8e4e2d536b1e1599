package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class CautionTextTests {

    @ParameterizedTest
    @EnumSource(Caution.Kind.class)
    void saysWhatIsWrongAndWhatToDo(Caution.Kind kind) {
        var text = CautionText.of(new Caution(kind, Side.RIGHT, List.of(12.345)));
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

    static Stream<Enum<?>> reasons() {
        return Stream.<Enum<?>[]>of(
                        SignOutcome.Reason.values(),
                        ReadNumber.Absence.values(),
                        CalibrationChoice.values(),
                        Positioning.Stance.values(),
                        Positioning.Patella.values())
                .flatMap(Stream::of);
    }
}
