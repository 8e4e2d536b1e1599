package org.espalier.science.growth;

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
 * <p>L the longer and S the shorter leg, ' on an earlier day, M the multiplier now. Source: Paley and others, J Bone
 * Joint Surg Am 2000;82-A:1432, formulae from memory. Error: that of reading the lengths, carried through as if
 * independent; that of the multiplier is not in it.
 */
public sealed interface DifferenceAtMaturity {

    /**
     * A difference.
     *
     * @param difference in the sense of the one given
     * @param halfWidth95 half the width of its 95 % range by reader error, above 0
     */
    record Expected(Length difference, Length halfWidth95) implements DifferenceAtMaturity {}

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
     * An acquired difference: the shorter leg goes on growing by its part of what the longer one grows.
     *
     * @param age on the later day
     * @param oneLength half the width of the 95 % range of one leg's length, above 0
     */
    static DifferenceAtMaturity acquired(Sex sex, Age age, Legs earlier, Legs now, Length oneLength) {
        double grown = now.longer.minus(earlier.longer).millimetres();
        double error = Math.sqrt(2) * oneLength.millimetres();
        if (grown <= error) {
            return new Unknown(Reason.TOO_LITTLE_GROWTH_BETWEEN);
        }
        double part = now.shorter.minus(earlier.shorter).millimetres() / grown;
        double toGrow = now.longer.millimetres() * (LegMultiplier.at(sex, age) - 1);
        double difference = now.longer.minus(now.shorter).millimetres();
        double inhibitionError = error / grown * Math.hypot(1, part);
        return new Expected(
                new Length(difference + (1 - part) * toGrow), new Length(Math.hypot(error, toGrow * inhibitionError)));
    }
}
