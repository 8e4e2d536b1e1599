package org.espalier.followup;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DecimalStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;

/** The words of letters in one language. */
final class LetterText {

    private static final String BUNDLE = "org.espalier.followup.letters";

    private final ResourceBundle words;
    private final Locale locale;

    LetterText(LetterLanguage language) {
        locale = language.locale();
        words = ResourceBundle.getBundle(
                BUNDLE, locale, ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    String text(String key, String... arguments) {
        return arguments.length == 0
                ? words.getString(key)
                : new MessageFormat(words.getString(key), locale).format(arguments);
    }

    List<String> items(String key) {
        return Arrays.asList(words.getString(key).split("\\|"));
    }

    /** The day with its weekday; the first of a month has a form of its own in some languages. */
    String day(LocalDate day) {
        return written(day.getDayOfMonth() == 1 ? "date.first" : "date", day);
    }

    String time(LocalTime time) {
        return written("time", time);
    }

    /** Digits are those of telephones. */
    private String written(String pattern, TemporalAccessor moment) {
        return DateTimeFormatter.ofPattern(words.getString(pattern), locale)
                .withDecimalStyle(DecimalStyle.STANDARD)
                .format(moment);
    }
}
