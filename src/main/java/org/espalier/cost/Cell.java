package org.espalier.cost;

/** A count as it may be told. */
public sealed interface Cell {

    /** Counts of persons below it are not told; none at all is. Common practice in health statistics. */
    int LEAST = 5;

    /** So many. */
    record Told(int count) implements Cell {}

    /** Fewer than five, or what five could be reckoned from. */
    record Hidden() implements Cell {}

    static Cell of(int count) {
        return isSmall(count) ? new Hidden() : new Told(count);
    }

    /** Whether so few could be known by it. */
    static boolean isSmall(int count) {
        return count > 0 && count < LEAST;
    }
}
