package org.espalier.treatment;

import java.time.LocalDate;

/**
 * When the child is to come again after a procedure.
 *
 * @param why in a few words
 */
public record NextLook(LocalDate date, String why) {

    /** The longest reason that is kept. */
    public static final int LENGTH = 200;

    public NextLook {
        why = Written.required(why, LENGTH);
    }
}
