package org.espalier.reading;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.espalier.kit.Texts;

/** A caution in words. */
final class CautionText {

    private CautionText() {}

    static String of(Caution caution) {
        return Texts.text(
                "reading.Kind." + caution.kind().name(),
                caution.values().stream().map(CautionText::word).toArray());
    }

    private static Object word(Object value) {
        return switch (value) {
            case Enum<?> named -> Texts.of(named);
            case Double number ->
                BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP).toPlainString();
            default -> String.valueOf(value);
        };
    }
}
