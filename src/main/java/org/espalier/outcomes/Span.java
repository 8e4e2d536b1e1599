package org.espalier.outcomes;

import java.time.LocalDate;

/**
 * Whole years, both included.
 *
 * @param to not before the first
 */
public record Span(int from, int to) {

    /** So many years are looked back when nobody chose. */
    private static final int USUAL = 9;

    public Span {
        if (from < 1900 || to > 9999 || from > to) {
            throw new IllegalArgumentException("No span of years: " + from + " to " + to);
        }
    }

    /** The years up to a day. */
    public static Span upTo(LocalDate today) {
        return new Span(today.getYear() - USUAL, today.getYear());
    }

    public boolean holds(LocalDate day) {
        return day.getYear() >= from && day.getYear() <= to;
    }

    LocalDate first() {
        return LocalDate.of(from, 1, 1);
    }

    LocalDate last() {
        return LocalDate.of(to, 12, 31);
    }
}
