package org.espalier.cost;

import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * What a child is called where its costs are shown: drawn by lot once for each hospital, so that nothing of the child
 * can be told from it. Letters and digits that are mistaken for others are left out.
 */
public record Pseudonym(String text) {

    private static final String SIGNS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ";
    private static final Pattern SHAPE = Pattern.compile("[2-9A-HJ-NP-Z]{4}-[2-9A-HJ-NP-Z]{4}");
    private static final int LENGTH = 8;
    private static final int HALF = 4;
    private static final SecureRandom RANDOM = new SecureRandom();

    public Pseudonym {
        if (!SHAPE.matcher(text).matches()) {
            throw new IllegalArgumentException("not a pseudonym: " + text);
        }
    }

    /** As somebody typed or sent it. */
    public static Optional<Pseudonym> read(String typed) {
        var text = typed.strip().toUpperCase(Locale.ROOT);
        return SHAPE.matcher(text).matches() ? Optional.of(new Pseudonym(text)) : Optional.empty();
    }

    static Pseudonym draw() {
        var signs = RANDOM.ints(LENGTH, 0, SIGNS.length())
                .mapToObj(at -> String.valueOf(SIGNS.charAt(at)))
                .collect(Collectors.joining());
        return new Pseudonym(signs.substring(0, HALF) + "-" + signs.substring(HALF));
    }
}
