package org.espalier.patient;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What was typed with one slip of the hand mended: two neighbours swapped, one character wrong, one too many, one too
 * few. As a PostgreSQL regular expression without anchors.
 */
final class OneSlip {

    private OneSlip() {}

    static String pattern(String typed) {
        var characters = typed.codePoints()
                .mapToObj(Character::toString)
                .map(OneSlip::literal)
                .toList();
        var forms = new LinkedHashSet<String>();
        forms.add(String.join("", characters));
        IntStream.range(0, characters.size()).forEach(at -> slips(characters, at, forms));
        forms.add(String.join("", characters) + ".");
        return forms.stream().collect(Collectors.joining("|", "(?:", ")"));
    }

    private static void slips(List<String> characters, int at, Set<String> forms) {
        var before = String.join("", characters.subList(0, at));
        var here = characters.get(at);
        var after = String.join("", characters.subList(at + 1, characters.size()));
        forms.add(before + "." + after);
        forms.add(before + "." + here + after);
        if (characters.size() > 1) {
            forms.add(before + after);
        }
        if (at + 1 < characters.size()) {
            var rest = String.join("", characters.subList(at + 2, characters.size()));
            forms.add(before + characters.get(at + 1) + here + rest);
        }
    }

    private static String literal(String character) {
        return character.matches("[\\p{L}\\p{N} ]") ? character : "\\" + character;
    }
}
