package org.espalier.stock.code;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/** A stretch of a value with characters of one set, a length, and rules of its own. */
record Component(CharacterSet characters, int shortest, int longest, boolean optional, List<Linter> rules) {

    private static final Pattern FORM = Pattern.compile("(\\[)?([NXYZ])(\\.\\.)?(\\d+)]?((?:,[a-z0-9]+)*)");

    /** The sets of the dictionary. */
    private enum CharacterSet {
        N("\\d+"),
        X("[!\"%&'()*+,\\-./0-9:;<=>?A-Z_a-z]+"),
        Y("[#\\-/0-9A-Z]+"),
        Z("[-0-9A-Z_a-z]+={0,2}");

        private final Pattern pattern;

        CharacterSet(String pattern) {
            this.pattern = Pattern.compile(pattern);
        }
    }

    static boolean isComponent(String word) {
        return FORM.matcher(word).matches();
    }

    static Component of(String word) {
        var form = FORM.matcher(word);
        if (!form.matches()) {
            throw new IllegalStateException("The dictionary has a component " + word);
        }
        int longest = Integer.parseInt(form.group(4));
        var rules = Arrays.stream(form.group(5).split(","))
                .filter(name -> !name.isEmpty())
                .map(Linter::named)
                .toList();
        return new Component(
                CharacterSet.valueOf(form.group(2)),
                form.group(3) == null ? longest : 1,
                longest,
                form.group(1) != null,
                rules);
    }

    Optional<CodeProblem> problem(String value) {
        if (value.length() < shortest) {
            return Optional.of(CodeProblem.TOO_SHORT);
        }
        if (!characters.pattern.matcher(value).matches() || hasWrongPadding(value)) {
            return Optional.of(CodeProblem.WRONG_CHARACTER);
        }
        return rules.stream()
                .filter(rule -> !rule.holds(value))
                .map(Linter::problem)
                .findFirst();
    }

    /** Padding fills up to a multiple of three, as the dictionary's test of this set wants it. */
    private boolean hasWrongPadding(String value) {
        return characters == CharacterSet.Z && value.endsWith("=") && value.length() % 3 != 0;
    }
}
