package org.espalier.science.growth;

import java.util.function.Function;
import org.espalier.science.quantity.Sex;

/** One thing for each sex. */
record BySex<T>(T female, T male) {

    static <T> BySex<T> of(Function<Sex, T> each) {
        return new BySex<>(each.apply(Sex.FEMALE), each.apply(Sex.MALE));
    }

    T get(Sex sex) {
        return switch (sex) {
            case FEMALE -> female;
            case MALE -> male;
        };
    }
}
