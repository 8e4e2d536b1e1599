package org.espalier.followup;

import java.util.Locale;

/** A language in which letters are written. */
public enum LetterLanguage {
    ENGLISH("en"),
    SPANISH("es"),
    FRENCH("fr"),
    PORTUGUESE("pt"),
    ARABIC("ar");

    private final String code;

    LetterLanguage(String code) {
        this.code = code;
    }

    /** The one of the two-letter code, else English. */
    public static LetterLanguage of(String code) {
        for (var language : values()) {
            if (language.code.equals(code)) {
                return language;
            }
        }
        return ENGLISH;
    }

    /** Days are named in it; Portuguese as in Portugal. */
    Locale locale() {
        return this == PORTUGUESE ? Locale.of(code, "PT") : Locale.of(code);
    }

    boolean isRightToLeft() {
        return this == ARABIC;
    }
}
