package org.espalier.patient;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Names without accents, capitals and punctuation, for finding and sorting; and the initials of a name. */
final class PlainName {

    private static final int MOST_INITIALS = 4;

    private PlainName() {}

    static String of(ChildData data) {
        return of(data.familyName() + " " + (data.givenName() == null ? "" : data.givenName()));
    }

    static String of(String name) {
        var folded = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD)
                .replaceAll("\\p{Mn}", "")
                .replace("ß", "ss")
                .replace("ø", "o")
                .replace("ł", "l")
                .replace("đ", "d")
                .replace("æ", "ae")
                .replace("œ", "oe")
                .replaceAll("['\u2019]", "");
        return folded.replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    static List<String> words(String text) {
        return Arrays.stream(of(text).split(" "))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    /** Given name first: {@code A. S.} */
    static String initials(ChildData data) {
        var name = (data.givenName() == null ? "" : data.givenName() + " ") + data.familyName();
        return Arrays.stream(name.split("[\\s\\-]+"))
                .map(word -> word.replaceAll("^[^\\p{L}]+", ""))
                .filter(word -> !word.isEmpty())
                .limit(MOST_INITIALS)
                .map(word -> word.substring(0, word.offsetByCodePoints(0, 1)).toUpperCase(Locale.ROOT) + ".")
                .collect(Collectors.collectingAndThen(
                        Collectors.joining(" "), initials -> initials.isEmpty() ? "?" : initials));
    }
}
