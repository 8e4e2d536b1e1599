package org.espalier.patient;

import org.espalier.science.quantity.Age;

/** When tibia vara began, by the words of the scheme that was used; schemes are not translated into each other. */
public enum Onset {
    /** Split at four: before the fourth birthday. */
    EARLY(Scheme.SPLIT_AT_FOUR, 0, 4),
    /** Split at four: from the fourth birthday on. */
    LATE(Scheme.SPLIT_AT_FOUR, 4, 21),
    /** Three groups: 0 to 3 years. */
    INFANTILE(Scheme.THREE_GROUPS, 0, 4),
    /** Three groups: 4 to 10 years. */
    JUVENILE(Scheme.THREE_GROUPS, 4, 11),
    /** Three groups: from 11 years on. */
    ADOLESCENT(Scheme.THREE_GROUPS, 11, 21);

    /** How onset is divided. */
    public enum Scheme {
        SPLIT_AT_FOUR,
        THREE_GROUPS
    }

    private final Scheme scheme;
    private final int fromYears;
    private final int beforeYears;

    Onset(Scheme scheme, int fromYears, int beforeYears) {
        this.scheme = scheme;
        this.fromYears = fromYears;
        this.beforeYears = beforeYears;
    }

    public Scheme scheme() {
        return scheme;
    }

    /** Whether an onset at the age is one of this group. */
    public boolean includes(Age age) {
        return age.years() >= fromYears && age.years() < beforeYears;
    }
}
