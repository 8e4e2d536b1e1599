package org.espalier.science.growth;

import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * The difference of leg lengths when growth has ended.
 *
 * <pre>
 * since birth   Δm = M · Δ
 * acquired      Δm = Δ + I · L · (M − 1),   I = 1 − (S − S')/(L − L')
 * </pre>
 *
 * <p>L the longer and S the shorter leg, ' on an earlier day, M the multiplier now. By the 1964 lengths M is the mean
 * length at 18 over that at the age, of femur and tibia each, and L · (M − 1) the mean growth of both. Source: Paley
 * and others, J Bone Joint Surg Am 2000;82-A:1432, formulae from memory. Error: that of reading the lengths, carried
 * through as if independent; that of the growth reckoned with is not in it.
 */
public sealed interface DifferenceAtMaturity {

    /**
     * A difference.
     *
     * @param difference in the sense of the one given
     * @param halfWidth95 half the width of its 95 % range by reader error, above 0
     */
    record Expected(Length difference, Length halfWidth95) implements DifferenceAtMaturity {

        /** Of two bones together, their errors as if independent. */
        public Expected plus(Expected other) {
            return new Expected(
                    difference.plus(other.difference),
                    new Length(Math.hypot(halfWidth95.millimetres(), other.halfWidth95.millimetres())));
        }

        /** The same seen from the other leg. */
        public Expected negated() {
            return new Expected(new Length(-difference.millimetres()), halfWidth95);
        }
    }

    /** None, and why. */
    record Unknown(Reason reason) implements DifferenceAtMaturity {}

    /** Why there is none. */
    enum Reason {
        /** The longer leg did not grow by more than reading again would give. */
        TOO_LITTLE_GROWTH_BETWEEN
    }

    /** Both legs on one day. */
    record Legs(Length longer, Length shorter) {}

    /**
     * A difference since birth: it keeps its proportion.
     *
     * @param difference now, with any sign
     * @param halfWidth95 of it, above 0
     */
    static Expected sinceBirth(Sex sex, Age age, Length difference, Length halfWidth95) {
        return new Expected(
                LegMultiplier.atMaturity(sex, age, difference), LegMultiplier.atMaturity(sex, age, halfWidth95));
    }

    /**
     * The same of one bone by the 1964 lengths.
     *
     * @return empty outside 1 to 18 years
     */
    static Optional<Expected> sinceBirth(
            LengthForAge.Bone bone, Sex sex, Age age, Length difference, Length halfWidth95) {
        var grown = LengthForAge.of(bone, sex, Age.ofYears(LengthForAge.GROWN)).orElseThrow();
        return LengthForAge.of(bone, sex, age)
                .map(now -> grown.mean() / now.mean())
                .map(times -> new Expected(
                        new Length(times * difference.millimetres()), new Length(times * halfWidth95.millimetres())));
    }

    /**
     * An acquired difference: the shorter leg goes on growing by its part of what the longer one grows.
     *
     * @param age on the later day
     * @param oneLength half the width of the 95 % range of one leg's length, above 0
     */
    static DifferenceAtMaturity acquired(Sex sex, Age age, Legs earlier, Legs now, Length oneLength) {
        return acquired(LengthAtMaturity.byMultiplier(sex, age, now.longer).growth(), earlier, now, oneLength);
    }

    /**
     * The same with the growth the longer leg still has, by whatever way of reckoning.
     *
     * @param growth at least 0
     */
    static DifferenceAtMaturity acquired(Length growth, Legs earlier, Legs now, Length oneLength) {
        double grown = now.longer.minus(earlier.longer).millimetres();
        double error = Math.sqrt(2) * oneLength.millimetres();
        if (grown <= error) {
            return new Unknown(Reason.TOO_LITTLE_GROWTH_BETWEEN);
        }
        double part = now.shorter.minus(earlier.shorter).millimetres() / grown;
        double toGrow = growth.millimetres();
        double difference = now.longer.minus(now.shorter).millimetres();
        double inhibitionError = error / grown * Math.hypot(1, part);
        return new Expected(
                new Length(difference + (1 - part) * toGrow), new Length(Math.hypot(error, toGrow * inhibitionError)));
    }
}
