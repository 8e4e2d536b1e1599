package org.espalier.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;
import org.espalier.science.quantity.Side;

/**
 * A film read by two, blind to each other, number beside number.
 *
 * @param first the reading that counts
 * @param second the reading made to compare
 */
public record TwoReaders(Reading first, Reading second) {

    /**
     * One number as both read it.
     *
     * @param published the 95 % half-width of the difference of two readings; empty where none is published
     */
    public record Pair(Side side, Quantity quantity, double first, double second, OptionalDouble published) {

        public double difference() {
            return second - first;
        }

        /** Whether they differ by more than readers do; false where that is not known. */
        public boolean isBeyondPublished() {
            return published.isPresent() && Math.abs(difference()) > published.getAsDouble();
        }
    }

    /** The pair among the readings of a film, the newest second reading first. */
    public static Optional<TwoReaders> among(List<Reading> ofFilm) {
        return ofFilm.stream()
                .filter(one -> one.secondOf().isPresent() && one.supersedes().isEmpty())
                .findFirst()
                .flatMap(second -> ofFilm.stream()
                        .filter(one ->
                                second.secondOf().filter(one.id()::equals).isPresent())
                        .findFirst()
                        .map(first -> new TwoReaders(first, second)));
    }

    /** The numbers that both read, in listing order, right before left. */
    public List<Pair> pairs() {
        var pairs = new ArrayList<Pair>();
        for (Quantity quantity : Quantity.values()) {
            for (Side side : Side.values()) {
                value(first, side, quantity).ifPresent(one -> value(second, side, quantity)
                        .ifPresent(other -> pairs.add(
                                new Pair(side, quantity, one, other, ReaderError.halfWidth95OfChange(quantity)))));
            }
        }
        return pairs;
    }

    private static OptionalDouble value(Reading reading, Side side, Quantity quantity) {
        return reading.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .map(ReadNumber::value)
                .orElse(OptionalDouble.empty());
    }
}
