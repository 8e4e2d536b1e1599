package org.espalier.film;

/** What came of a photo or clip that was sent. */
public sealed interface PictureReceived {

    /** Kept; the same bytes sent again for the same child are kept once. */
    record Kept(PictureId picture) implements PictureReceived {}

    /** Not kept; the sender still has it. */
    record Refused(PictureProblem problem) implements PictureReceived {}
}
