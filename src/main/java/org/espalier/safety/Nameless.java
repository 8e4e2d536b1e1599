package org.espalier.safety;

import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.kit.Who;

/** What leaves the hospital says nothing of who the child is. */
public final class Nameless {

    private static final String BETWEEN_WORDS = "[^\\p{L}\\p{N}-]+";

    private Nameless() {}

    /** Whether a text holds a name or the number of the child, as a word of its own, in capitals or not. */
    public static boolean isNamed(Who who, String text) {
        return switch (who) {
            case Who.Initialled initials -> false;
            case Who.Named named -> {
                var words = words(text);
                yield Stream.of(named.familyName(), named.givenName(), named.localNumber())
                        .filter(Objects::nonNull)
                        .anyMatch(name -> words.containsAll(words(name)));
            }
        };
    }

    private static Set<String> words(String text) {
        return Stream.of(text.toLowerCase(Locale.ROOT).split(BETWEEN_WORDS))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.toSet());
    }
}
