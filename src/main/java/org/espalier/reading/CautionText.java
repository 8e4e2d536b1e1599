package org.espalier.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;

/** A caution in words. */
final class CautionText {

    private CautionText() {}

    static String of(Caution caution) {
        if (caution.kind() == Caution.Kind.NOT_RECORDED) {
            var missing = caution.values().stream()
                    .map(kind -> Texts.text("reading.not-recorded." + kind))
                    .collect(Collectors.joining(", "));
            return Texts.text("reading.Kind.NOT_RECORDED", missing);
        }
        return Texts.text(
                "reading.Kind." + caution.kind().name(),
                caution.values().stream()
                        .map(value -> word(caution.kind(), value))
                        .toArray());
    }

    private static Object word(Caution.Kind kind, Object value) {
        return switch (value) {
            case Enum<?> named -> Texts.of(named);
            case LocalDate day -> DateText.of(day);
            case Double number ->
                BigDecimal.valueOf(number)
                        .setScale(kind == Caution.Kind.BALL_AGAINST_TAGS ? 2 : 1, RoundingMode.HALF_UP)
                        .toPlainString();
            default -> String.valueOf(value);
        };
    }
}
