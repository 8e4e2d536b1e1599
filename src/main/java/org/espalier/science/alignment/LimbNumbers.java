package org.espalier.science.alignment;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * The numbers of one limb on one film.
 *
 * @param side the child's own side; it does not enter any number
 * @param outcomes what came of each quantity, all of them, in listing order
 */
public record LimbNumbers(Side side, Map<Quantity, Measured> outcomes) {

    /**
     * Keeps its own copy of the outcomes.
     *
     * @throws IllegalArgumentException if a quantity is missing
     */
    public LimbNumbers {
        if (outcomes.size() != Quantity.values().length) {
            throw new IllegalArgumentException("Numbers of a limb tell every quantity, not only " + outcomes.keySet());
        }
        outcomes = Collections.unmodifiableMap(new EnumMap<>(outcomes));
    }

    /** What came of the quantity. */
    public Measured outcome(Quantity quantity) {
        Measured outcome = outcomes.get(quantity);
        if (outcome == null) {
            throw new IllegalStateException("Numbers of a limb tell every quantity, but not " + quantity);
        }
        return outcome;
    }

    /** The value in the quantity's own unit; empty if there is none. */
    public OptionalDouble value(Quantity quantity) {
        return outcome(quantity) instanceof Measured.Value(double value)
                ? OptionalDouble.of(value)
                : OptionalDouble.empty();
    }

    /**
     * The value of a quantity told in degrees; empty if there is none.
     *
     * @throws IllegalArgumentException if the quantity is not told in degrees
     */
    public Optional<Angle> angle(Quantity quantity) {
        requireUnit(quantity, Quantity.Unit.DEGREES);
        return outcome(quantity) instanceof Measured.Value(double value)
                ? Optional.of(new Angle(value))
                : Optional.empty();
    }

    /**
     * The value of a quantity told in millimetres; empty if there is none.
     *
     * @throws IllegalArgumentException if the quantity is not told in millimetres
     */
    public Optional<Length> length(Quantity quantity) {
        requireUnit(quantity, Quantity.Unit.MILLIMETRES);
        return outcome(quantity) instanceof Measured.Value(double value)
                ? Optional.of(new Length(value))
                : Optional.empty();
    }

    private static void requireUnit(Quantity quantity, Quantity.Unit unit) {
        if (quantity.unit() != unit) {
            throw new IllegalArgumentException(quantity + " is told in " + quantity.unit() + ", not in " + unit);
        }
    }
}
