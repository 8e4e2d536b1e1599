package org.espalier.stock.code;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Dates with two-digit years. The century is the one that brings the year nearest to the day of reading, from 49 years
 * before to 50 years after (General Specifications, 7.12); day 00 is the last of its month (3.4.2). HIBC names no
 * rule of its own: its years are read the same way.
 */
final class ShortDates {

    private static final int FARTHEST_AHEAD = 50;
    private static final int FARTHEST_BACK = 49;

    private ShortDates() {}

    static int year(int twoDigits, LocalDate today) {
        int year = today.getYear() / 100 * 100 + twoDigits;
        int ahead = year - today.getYear();
        if (ahead > FARTHEST_AHEAD) {
            return year - 100;
        }
        return ahead < -FARTHEST_BACK ? year + 100 : year;
    }

    /** YYMMDD; day 00 is the last of the month. */
    static Optional<LocalDate> yearMonthDay(String digits, LocalDate today) {
        int day = number(digits, 4, 6);
        return of(() -> {
            var month = YearMonth.of(year(number(digits, 0, 2), today), number(digits, 2, 4));
            return day == 0 ? month.atEndOfMonth() : month.atDay(day);
        });
    }

    /** YYJJJ, the day counted from the first of January. */
    static Optional<LocalDate> yearDay(String digits, LocalDate today) {
        return of(() -> LocalDate.ofYearDay(year(number(digits, 0, 2), today), number(digits, 2, 5)));
    }

    /** YYYYMMDD. */
    static Optional<LocalDate> full(String digits) {
        return of(() -> LocalDate.of(number(digits, 0, 4), number(digits, 4, 6), number(digits, 6, 8)));
    }

    /** Whether six digits name a day of some century: the 29th of February of any leap year counts. */
    static boolean isDay(String digits, boolean orNone) {
        int day = number(digits, 4, 6);
        int month = number(digits, 2, 4);
        int year = 2000 + number(digits, 0, 2);
        return (orNone || day > 0)
                && month >= 1
                && month <= 12
                && day <= YearMonth.of(year, month).lengthOfMonth();
    }

    private static int number(String digits, int from, int to) {
        return Integer.parseInt(digits, from, to, 10);
    }

    private static Optional<LocalDate> of(Supplier<LocalDate> date) {
        try {
            return Optional.of(date.get());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
