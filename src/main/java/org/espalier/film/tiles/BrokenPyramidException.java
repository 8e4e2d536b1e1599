package org.espalier.film.tiles;

import java.io.IOException;

/** The file of tiles is not whole or of another version; it can be built anew from the film. */
public final class BrokenPyramidException extends IOException {

    private static final long serialVersionUID = 1;

    BrokenPyramidException(String what) {
        super(what);
    }
}
