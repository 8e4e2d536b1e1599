package org.espalier.reading;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;

/**
 * What is known of the child on a film: what is normal depends on it, and what cannot be.
 *
 * @param age on the day of the film
 * @param earlier what stands of earlier films, without what is in doubt
 */
record ChildOnFilm(Optional<Age> age, Optional<Sex> sex, List<EarlierNumber> earlier) {

    static final ChildOnFilm UNKNOWN = new ChildOnFilm(Optional.empty(), Optional.empty(), List.of());

    ChildOnFilm {
        earlier = List.copyOf(earlier);
    }

    /** The quantity of the limb on the last film before this one. */
    Optional<EarlierNumber> last(Side side, Quantity quantity) {
        return earlier.stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .max(Comparator.comparing(EarlierNumber::day));
    }

    /** The first film before this one that tells both quantities of the limb, by the first of them. */
    Optional<EarlierNumber> firstWith(Side side, Quantity quantity, Quantity other) {
        return earlier.stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .filter(number -> on(number, other).isPresent())
                .min(Comparator.comparing(EarlierNumber::day));
    }

    /** Another quantity of the same limb and day. */
    Optional<EarlierNumber> on(EarlierNumber same, Quantity quantity) {
        return earlier.stream()
                .filter(number -> number.side() == same.side() && number.quantity() == quantity)
                .filter(number -> number.day().equals(same.day()))
                .findFirst();
    }
}
