package org.espalier.opinion;

import java.text.Normalizer;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.espalier.kit.Who;

/** Who a child is, to be found in words that are about to leave the hospital. */
final class Identity {

    private static final int SHORTEST_NAME = 3;
    private static final List<String> DAYS = List.of(
            "uuuu-MM-dd",
            "uuuuMMdd",
            "dd-MMM-uuuu",
            "d MMM uuuu",
            "d MMMM uuuu",
            "dd.MM.uuuu",
            "d.M.uuuu",
            "dd/MM/uuuu",
            "d/M/uuuu",
            "MM/dd/uuuu",
            "M/d/uuuu");

    private final List<String> words;

    private Identity(List<String> words) {
        this.words = words;
    }

    static Identity of(Who who) {
        return switch (who) {
            case Who.Initialled initialled -> new Identity(List.of());
            case Who.Named named -> of(named);
        };
    }

    private static Identity of(Who.Named named) {
        var words = new ArrayList<String>();
        names(named.familyName()).forEach(words::add);
        if (named.givenName() != null) {
            names(named.givenName()).forEach(words::add);
        }
        if (named.localNumber() != null) {
            words.add(plain(named.localNumber()));
        }
        days(named.birthDate()).forEach(words::add);
        return new Identity(words);
    }

    /** The child's initials, all that is told of the name. */
    static String initials(Who who) {
        return switch (who) {
            case Who.Initialled initialled -> initialled.initials();
            case Who.Named named ->
                (named.givenName() == null ? "" : named.givenName().substring(0, 1))
                        + named.familyName().charAt(0);
        };
    }

    /** Whether the text holds a name, the number or the day of birth. */
    boolean isIn(String text) {
        var plain = " " + plain(text) + " ";
        return words.stream().anyMatch(word -> plain.contains(" " + word + " "));
    }

    /** The parts of a name too, but for those so short that they are words of their own. */
    private static Stream<String> names(String name) {
        return Stream.concat(Stream.of(plain(name)), Stream.of(plain(name).split(" ")))
                .filter(word -> word.length() >= SHORTEST_NAME);
    }

    private static Stream<String> days(LocalDate day) {
        return DAYS.stream()
                .map(pattern -> plain(
                        DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH).format(day)));
    }

    /** Without accents and capitals, everything that is neither letter nor digit a blank. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .replaceAll("\\p{M}", "")
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", " ")
                .strip();
    }
}
