package org.espalier.followup;

import java.text.MessageFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DecimalStyle;
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

    /** The day with its weekday, its digits those of telephones. */
    String day(LocalDate day) {
        return DateTimeFormatter.ofPattern(words.getString("date"), locale)
                .withDecimalStyle(DecimalStyle.STANDARD)
                .format(day);
    }
}
