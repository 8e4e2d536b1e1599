package org.espalier.demo;

import java.util.OptionalInt;

/**
 * A visit with a film.
 *
 * @param ageMonths of the child that day
 * @param boneAgeMonths of a hand film of that day, where one was taken
 * @param read whether a surgeon has read and signed the film
 */
record DemoVisit(
        int ageMonths,
        DemoKnee right,
        DemoKnee left,
        double heightCm,
        double weightKg,
        OptionalInt boneAgeMonths,
        boolean read) {

    static DemoVisit at(int ageMonths, double heightCm, double weightKg, DemoKnee right, DemoKnee left) {
        return new DemoVisit(ageMonths, right, left, heightCm, weightKg, OptionalInt.empty(), true);
    }

    /** The same visit with a bone age. */
    DemoVisit boneAge(int months) {
        return new DemoVisit(ageMonths, right, left, heightCm, weightKg, OptionalInt.of(months), read);
    }

    /** The same visit, its film not read yet. */
    DemoVisit unread() {
        return new DemoVisit(ageMonths, right, left, heightCm, weightKg, boneAgeMonths, false);
    }
}
