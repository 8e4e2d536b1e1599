package org.espalier.followup.ui;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.espalier.kit.Texts;

/** Languages families speak, by their names in the reader's language; those with letters of their own come first. */
final class Languages {

    private static final List<String> WITH_LETTERS = List.of("en", "es", "fr", "pt", "ar");

    private Languages() {}

    static List<String> all() {
        var others = Stream.of(Locale.getISOLanguages())
                .filter(code -> !WITH_LETTERS.contains(code))
                .sorted((one, other) -> name(one).compareTo(name(other)));
        return Stream.concat(WITH_LETTERS.stream(), others).toList();
    }

    static String name(String code) {
        return Locale.of(code).getDisplayLanguage(Texts.language());
    }
}
