package org.espalier.patient;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.science.growth.BodyMassIndex;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Weight;
import org.jspecify.annotations.Nullable;

/**
 * Height and weight, or one of them.
 *
 * @param height 30 to 230 cm; null when not measured
 * @param weight 1 to 300 kg; null when not measured
 */
public record BodySize(
        LocalDate on, @Nullable Length height, @Nullable Weight weight) implements Finding {

    private static final Length SMALLEST = Length.ofCentimetres(30);
    private static final Length TALLEST = Length.ofCentimetres(230);
    private static final double LIGHTEST_KG = 1;
    private static final double HEAVIEST_KG = 300;
    private static final double LEAST_INDEX = 5;
    private static final double GREATEST_INDEX = 100;

    public BodySize {
        if (height == null && weight == null) {
            throw new IllegalArgumentException("Neither height nor weight was measured");
        }
        if (height != null && (height.compareTo(SMALLEST) < 0 || height.compareTo(TALLEST) > 0)) {
            throw new IllegalArgumentException(
                    "A height lies between 30 and 230 cm, not at " + height.toMetres() * 100 + " cm");
        }
        if (weight != null && (weight.kilograms() < LIGHTEST_KG || weight.kilograms() > HEAVIEST_KG)) {
            throw new IllegalArgumentException(
                    "A weight lies between 1 and 300 kg, not at " + weight.kilograms() + " kg");
        }
        if (height != null && weight != null && !isPlausible(height, weight)) {
            throw new IllegalArgumentException(weight + " and " + height + " do not belong to one child");
        }
    }

    /** Whether a child can have both: a body mass index between 5 and 100 kg/m². */
    public static boolean isPlausible(Length height, Weight weight) {
        double metres = height.toMetres();
        double index = weight.kilograms() / (metres * metres);
        return index >= LEAST_INDEX && index <= GREATEST_INDEX;
    }

    /** The body mass index; empty unless both were measured. */
    public Optional<BodyMassIndex> index() {
        return height == null || weight == null ? Optional.empty() : Optional.of(BodyMassIndex.of(weight, height));
    }
}
