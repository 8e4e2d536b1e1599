package org.espalier.plan;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A sheet of the desk. */
public enum SheetKind {
    /** Options side by side. */
    OPTIONS,
    /** Is it physiological? */
    BOW,
    GROWTH,
    OSTEOTOMY,
    LENGTH;

    /** Its word in an address. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<SheetKind> ofWord(String word) {
        return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }
}
