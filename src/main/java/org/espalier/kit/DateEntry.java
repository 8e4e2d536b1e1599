package org.espalier.kit;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a freely typed date means: one day, one of two, or nothing that can be read. */
public sealed interface DateEntry {

    /** One day, and no other reading of what was typed. */
    record Read(LocalDate day) implements DateEntry {}

    /** Two days, day first before month first; the reader must say which. */
    record Ambiguous(LocalDate dayFirst, LocalDate monthFirst) implements DateEntry {}

    /** Not a day of the calendar. */
    record Unreadable() implements DateEntry {}

    /**
     * Reads what was typed. Days may be parted by blanks, points, dashes, strokes or nothing; months may be names in
     * the reader's language or in English, shortened to three letters or more; a year of two digits is the latest that
     * does not lie after today.
     */
    static DateEntry of(String typed, Locale language, LocalDate today) {
        var parts = parts(typed);
        if (parts.size() != 3) {
            return new Unreadable();
        }
        var first = parts.get(0);
        var second = parts.get(1);
        var third = parts.get(2);
        if (first.length() == 4) {
            return read(day(first, second, third, language, today));
        }
        var dayFirst = day(third, second, first, language, today);
        var monthFirst = day(third, first, second, language, today);
        return dayFirst.isPresent() && monthFirst.isPresent() && !dayFirst.equals(monthFirst)
                ? new Ambiguous(dayFirst.get(), monthFirst.get())
                : read(dayFirst.or(() -> monthFirst));
    }

    private static DateEntry read(Optional<LocalDate> day) {
        return day.<DateEntry>map(Read::new).orElseGet(Unreadable::new);
    }

    private static List<String> parts(String typed) {
        var text = typed.strip();
        if (text.matches("(19|20)\\d{6}")) {
            return List.of(text.substring(0, 4), text.substring(4, 6), text.substring(6));
        }
        if (text.matches("\\d{8}|\\d{6}")) {
            return List.of(text.substring(0, 2), text.substring(2, 4), text.substring(4));
        }
        return Arrays.stream(text.split("[\\s\\p{Zs}./,\\p{Pd}]+|(?<=\\d)(?=\\p{L})|(?<=\\p{L})(?=\\d)"))
                .filter(part -> !part.isBlank())
                .toList();
    }

    private static Optional<LocalDate> day(String year, String month, String day, Locale language, LocalDate today) {
        if (!year.matches("\\d{4}|\\d{2}") || !day.matches("\\d{1,2}")) {
            return Optional.empty();
        }
        return month(month, language).flatMap(number -> {
            try {
                return Optional.of(LocalDate.of(year(year, today), number, Integer.parseInt(day)));
            } catch (DateTimeException e) {
                return Optional.empty();
            }
        });
    }

    private static int year(String typed, LocalDate today) {
        int value = Integer.parseInt(typed);
        if (typed.length() == 4) {
            return value;
        }
        int century = today.getYear() / 100 * 100;
        return century + value > today.getYear() ? century - 100 + value : century + value;
    }

    private static Optional<Integer> month(String typed, Locale language) {
        if (typed.matches("\\d{1,2}")) {
            return Optional.of(Integer.valueOf(typed));
        }
        var lower = typed.toLowerCase(language);
        return lower.length() < 3
                ? Optional.empty()
                : Stream.of(Month.values())
                        .filter(month -> Stream.of(language, Locale.ENGLISH)
                                .map(one -> month.getDisplayName(TextStyle.FULL, one)
                                        .toLowerCase(one))
                                .anyMatch(name -> name.startsWith(lower)))
                        .map(Month::getValue)
                        .findFirst();
    }
}
