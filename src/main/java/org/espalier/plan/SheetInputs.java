package org.espalier.plan;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/**
 * What was typed into a sheet, as its address holds it.
 *
 * @param values by name; what is blank counts as not given
 */
public record SheetInputs(Map<String, String> values) {

    public static final SheetInputs NONE = new SheetInputs(Map.of());

    public SheetInputs {
        values = Map.copyOf(values);
    }

    public Optional<String> text(String name) {
        return Optional.ofNullable(values.get(name)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** A number within its limits; empty when it is not given, is no number, or lies outside. */
    public Optional<Double> number(String name, double least, double most) {
        return text(name).flatMap(SheetInputs::parsed).filter(value -> value >= least && value <= most);
    }

    /** One of the constants; empty when none of them is named. */
    public <E extends Enum<E>> Optional<E> choice(String name, Class<E> type) {
        return text(name).flatMap(text -> Arrays.stream(type.getEnumConstants())
                .filter(one -> one.name().equalsIgnoreCase(text))
                .findFirst());
    }

    private static Optional<Double> parsed(String text) {
        try {
            return Optional.of(Double.parseDouble(text)).filter(Double::isFinite);
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }
}
