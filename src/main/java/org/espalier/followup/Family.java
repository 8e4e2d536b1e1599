package org.espalier.followup;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How a family is reached.
 *
 * @param version 0 while nothing is kept
 * @param phones the one to try first comes first
 * @param language of letters, a two-letter code
 * @param transport how the family comes, and what it costs them
 * @param school terms, and whom to ask there
 * @param doNotContact why nobody may write or call; null when one may
 * @param safeguardingLead who leads when the child's welfare is in question
 */
public record Family(
        long version,
        List<Phone> phones,
        String language,
        boolean interpreter,
        @Nullable String transport,
        @Nullable String school,
        @Nullable String doNotContact,
        @Nullable String safeguardingLead) {

    /** Nothing is known yet. */
    public static final Family UNKNOWN = new Family(0, List.of(), "en", false, null, null, null, null);

    public Family {
        phones = List.copyOf(phones);
    }

    public boolean mayBeContacted() {
        return doNotContact == null;
    }
}
