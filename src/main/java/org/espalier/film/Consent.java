package org.espalier.film;

import java.time.LocalDate;

/** Who agreed that a photo or clip is kept in the child's record, and when. */
public record Consent(By by, LocalDate on) {

    /** Who agreed. */
    public enum By {
        PARENT,
        GUARDIAN,
        YOUNG_PERSON
    }
}
