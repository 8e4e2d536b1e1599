package org.espalier.science.alignment;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.PrintedTable;

/**
 * The published range of a quantity at an age, drawn as the neutral band. It describes a population; it is no target.
 *
 * @param quantity the quantity
 * @param low in its unit and sign
 * @param high in its unit and sign, above low
 * @param from the first age it may be drawn for
 * @param before the age from which it may no longer be drawn
 * @param checking how far the numbers have been checked
 * @param source where they were printed and for whom they hold
 */
public record NormalRange(
        Quantity quantity, double low, double high, Age from, Age before, Checking checking, String source) {

    private static final List<NormalRange> ALL = Stream.concat(
                    PrintedTable.of(NormalRange.class, "normal-ranges.csv").rows().stream()
                            .map(NormalRange::of),
                    NormForAge.bands())
            .toList();

    /** How far a printed number has been checked. */
    public enum Checking {
        /** Read in the source itself. */
        READ,
        /** Read where another quotes the source. */
        SECONDARY,
        /** From memory: unverified, and to be shown so. */
        MEMORY;

        /** Whether it has to be marked as unverified wherever it is shown. */
        public boolean isUnverified() {
            return this == MEMORY;
        }
    }

    /**
     * Checks that the range has a width and a span of ages.
     *
     * @throws IllegalArgumentException if low is not below high or the ages are not in order
     */
    public NormalRange {
        if (!(low < high) || from.compareTo(before) >= 0) {
            throw new IllegalArgumentException("A range runs upwards and over some age, not from " + low + " to " + high
                    + " between " + from + " and " + before);
        }
    }

    /** Every range, in the order of the table. */
    public static List<NormalRange> all() {
        return ALL;
    }

    /**
     * The range of a quantity at an age.
     *
     * @return empty where none is known
     */
    public static Optional<NormalRange> of(Quantity quantity, Age age) {
        return ALL.stream()
                .filter(range -> range.quantity == quantity && range.isFor(age))
                .findFirst();
    }

    /** Whether it may be drawn at the age. */
    public boolean isFor(Age age) {
        return age.compareTo(from) >= 0 && age.compareTo(before) < 0;
    }

    /** Whether a value lies in it, ends included. */
    public boolean contains(double value) {
        return value >= low && value <= high;
    }

    private static NormalRange of(PrintedTable.Row row) {
        return new NormalRange(
                Quantity.ofCode(row.text("quantity")).orElseThrow(),
                row.number("low"),
                row.number("high"),
                Age.ofYears(Integer.parseInt(row.text("from_years"))),
                Age.ofYears(Integer.parseInt(row.text("to_years"))),
                Checking.valueOf(row.text("checked").toUpperCase(Locale.ROOT)),
                row.text("source"));
    }
}
