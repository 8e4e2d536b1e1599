package org.espalier.kit;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import org.espalier.science.quantity.Age;

/**
 * Days and ages as clinics write them: {@code 14-Jul-2019}, never all digits; {@code 6y 4m}. No line breaks within a
 * day: its hyphens and blanks hold together what stands on both sides.
 */
public final class DateText {

    private static final int MONTHS_OF_TWO_YEARS = 24;

    private static final String HYPHEN = "\u2011";
    private static final String BLANK = "\u00a0";

    private DateText() {}

    /** The day, short: {@code 14-Jul-2019}. */
    public static String of(LocalDate day) {
        return typed(day).replace("-", HYPHEN);
    }

    /** The day as the keys of a keyboard write it, for fields that are typed into. */
    public static String typed(LocalDate day) {
        return written("dd-MMM-uuuu", day);
    }

    /** The day with its month in full: {@code 14 July 2019}. */
    public static String inWords(LocalDate day) {
        return written("d MMMM uuuu", day).replace(" ", BLANK);
    }

    /** Years and months; under two years months; under one month days. */
    public static String of(Age age) {
        if (age.completedMonths() == 0) {
            return Texts.text("kit.age.days", age.daysBeyond());
        }
        if (age.completedMonths() < MONTHS_OF_TWO_YEARS) {
            return Texts.text("kit.age.months", age.completedMonths());
        }
        return Texts.text("kit.age.years", age.years(), age.months());
    }

    /** The day of birth with the age: {@code 14-Jul-2019 (6y 4m)}; a day of birth still to come stands alone. */
    public static String born(LocalDate birth, LocalDate today) {
        return birth.isAfter(today) ? of(birth) : of(birth) + " (" + of(Age.between(birth, today)) + ")";
    }

    private static String written(String pattern, LocalDate day) {
        return DateTimeFormatter.ofPattern(pattern, Texts.language()).format(day);
    }
}
