package org.espalier.patient;

import java.time.LocalDate;
import org.espalier.kit.Who;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/**
 * Who a child is, as a form edits it. Blanks around and doubled within are dropped.
 *
 * @param givenName null when not known
 * @param sex null when not known
 * @param localNumber the hospital's own number; null when not known
 */
public record ChildData(
        String familyName,
        @Nullable String givenName,
        LocalDate birthDate,
        @Nullable Sex sex,
        @Nullable String localNumber) {

    /** The longest name that is kept. */
    public static final int NAME_LENGTH = 120;

    /** The longest local number that is kept. */
    public static final int NUMBER_LENGTH = 40;

    public ChildData {
        var family = tidy(familyName, NAME_LENGTH);
        if (family == null) {
            throw new IllegalArgumentException("A child has a family name");
        }
        familyName = family;
        givenName = tidy(givenName, NAME_LENGTH);
        localNumber = tidy(localNumber, NUMBER_LENGTH);
    }

    static ChildData of(Who.Named who) {
        return new ChildData(who.familyName(), who.givenName(), who.birthDate(), who.sex(), who.localNumber());
    }

    private static @Nullable String tidy(@Nullable String text, int longest) {
        var tidy = text == null ? "" : text.strip().replaceAll("\\s+", " ");
        if (tidy.length() > longest) {
            throw new IllegalArgumentException("Longer than " + longest + " characters");
        }
        return tidy.isEmpty() ? null : tidy;
    }
}
