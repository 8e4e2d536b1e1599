package org.espalier.interchange;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How constants and numbers are written in a cell: {@code PLATE_PLACED} as {@code plate placed}. */
final class Words {

    /** The two answers. */
    static final Map<String, Boolean> YES_NO = yesNo();

    private Words() {}

    private static Map<String, Boolean> yesNo() {
        Map<String, Boolean> answers = new LinkedHashMap<>();
        answers.put("yes", true);
        answers.put("no", false);
        return Collections.unmodifiableMap(answers);
    }

    static String of(boolean answer) {
        return answer ? "yes" : "no";
    }

    static String of(@Nullable Enum<?> constant) {
        return constant == null ? "" : of(constant.name());
    }

    static String of(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The constants of a type by their words, in their order. */
    static <E extends Enum<E>> Map<String, E> all(Class<E> type) {
        return all(Arrays.asList(type.getEnumConstants()));
    }

    static <E extends Enum<E>> Map<String, E> all(Collection<E> constants) {
        return constants.stream()
                .collect(Collectors.toMap(Words::of, one -> one, (one, other) -> one, LinkedHashMap::new));
    }

    /** The number with as many decimals as it needs, and no more than given. */
    static String of(double number, int decimals) {
        var plain = BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        return plain.equals("-0") ? "0" : plain;
    }

    /** The value as it prints; nothing for null. */
    static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }
}
