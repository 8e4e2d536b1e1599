package org.espalier.film.internal.clip;

/** A clip whose container is not understood so far that what stands beside the picture could be taken out. */
public final class ClipNotUnderstood extends Exception {

    private static final long serialVersionUID = 1;

    ClipNotUnderstood(String why) {
        super(why);
    }
}
