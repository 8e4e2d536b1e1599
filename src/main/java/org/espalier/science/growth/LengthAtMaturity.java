package org.espalier.science.growth;

import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * How long a bone will be when it has grown, by one way of reckoning.
 *
 * <pre>
 * multiplier       L · M
 * lengths by age   L + mean length at 18 − mean length at the age
 * </pre>
 *
 * <p>The second leaves the bone's own percentile out, which told nothing of the growth that followed (441 segments, J
 * Bone Joint Surg Am 2021). Source: {@link LegMultiplier}, {@link LengthForAge}. Error: a quarter of the growth that is
 * reckoned with ({@link GrowthCurve#MODEL_ERROR}, judged), beside that of the length.
 *
 * @param length at maturity, at least the present one
 * @param growth what of it is still to grow, at least 0
 */
public record LengthAtMaturity(Length length, Length growth) {

    /** By the multiplier, from birth on. */
    public static LengthAtMaturity byMultiplier(Sex sex, Age age, Length now) {
        return of(now, new Length(now.millimetres() * (LegMultiplier.at(sex, age) - 1)));
    }

    /**
     * By the 1964 lengths.
     *
     * @return empty under a year
     */
    public static Optional<LengthAtMaturity> byLengths(LengthForAge.Bone bone, Sex sex, Age age, Length now) {
        return Stream.of(GrowthPlate.values())
                .filter(plate -> plate.bone() == bone)
                .map(plate -> GrowthCurve.byLengths(plate, sex).left(age))
                .reduce(Optional.of(new Length(0)), (one, other) -> one.flatMap(sum -> other.map(sum::plus)))
                .map(growth -> of(now, growth));
    }

    private static LengthAtMaturity of(Length now, Length growth) {
        return new LengthAtMaturity(now.plus(growth), growth);
    }

    /** With a quarter less growth. */
    public Length low() {
        return new Length(length.millimetres() - GrowthCurve.MODEL_ERROR * growth.millimetres());
    }

    /** With a quarter more growth. */
    public Length high() {
        return new Length(length.millimetres() + GrowthCurve.MODEL_ERROR * growth.millimetres());
    }
}
