package org.espalier.opinion;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.espalier.kit.Texts;
import org.jspecify.annotations.Nullable;

/**
 * Takes the days out of words that were kept with days in them, and tells the months instead.
 *
 * @param first the day of the child's first film, from which months are counted
 */
record DaylessWords(@Nullable LocalDate first) {

    private static final Pattern DAY = Pattern.compile("\\d{1,2}\\p{Pd}\\p{L}+\\.?\\p{Pd}\\d{4}");

    /** What may be a day in any other way of writing; a year alone stands in citations. */
    private static final Pattern DOUBTFUL = Pattern.compile("\\d{4}\\p{Pd}\\d{1,2}\\p{Pd}\\d{1,2}"
            + "|\\d{1,2}[./]\\d{1,2}[./]\\d{2,4}"
            + "|\\d{1,2}\\.?\\p{Zs}\\p{L}{3,}\\p{Zs}\\d{4}");

    /** Empty when a day in it cannot be told in months. */
    Optional<String> of(String words) {
        var told = new StringBuilder();
        var days = DAY.matcher(words);
        while (days.find()) {
            var months = months(days.group());
            if (months.isEmpty()) {
                return Optional.empty();
            }
            days.appendReplacement(told, Matcher.quoteReplacement(Texts.text("opinion.month", months.get())));
        }
        days.appendTail(told);
        return DOUBTFUL.matcher(told).find() ? Optional.empty() : Optional.of(told.toString());
    }

    Optional<Integer> months(@Nullable LocalDate day) {
        return first == null || day == null
                ? Optional.empty()
                : Optional.of(Math.toIntExact(ChronoUnit.MONTHS.between(first, day)));
    }

    private Optional<Integer> months(String day) {
        try {
            var typed = day.replaceAll("\\p{Pd}", "-");
            return months(LocalDate.parse(typed, DateTimeFormatter.ofPattern("dd-MMM-uuuu", Texts.language())));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
