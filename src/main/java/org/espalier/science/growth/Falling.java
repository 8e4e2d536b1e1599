package org.espalier.science.growth;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/** Turns round a quantity that never rises with age, by halving. Error: below 1e-9 years. */
final class Falling {

    private static final int HALVINGS = 40;

    private Falling() {}

    /**
     * The youngest age from which on the value is at or below a wanted one; empty where it never is or always was
     * below.
     */
    static OptionalDouble firstAtOrBelow(DoubleUnaryOperator value, double from, double to, double wanted) {
        if (wanted > value.applyAsDouble(from) || wanted < value.applyAsDouble(to)) {
            return OptionalDouble.empty();
        }
        double above = from;
        double below = to;
        for (int i = 0; i < HALVINGS && value.applyAsDouble(above) > wanted; i++) {
            double middle = (above + below) / 2;
            if (value.applyAsDouble(middle) > wanted) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return OptionalDouble.of(value.applyAsDouble(above) > wanted ? below : above);
    }
}
