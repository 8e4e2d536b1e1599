package org.espalier.opinion;

import java.util.List;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/** A film as one person read it, blind to the others. */
public record BlindReading(String name, boolean mine, List<Number> numbers) {

    /** One number of one limb, in its quantity's unit. */
    public record Number(Side side, Quantity quantity, double value) {}

    public BlindReading {
        numbers = List.copyOf(numbers);
    }

    /** How this person read the quantity of the limb. */
    public OptionalDouble value(Side side, Quantity quantity) {
        return numbers.stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .mapToDouble(Number::value)
                .findFirst();
    }
}
