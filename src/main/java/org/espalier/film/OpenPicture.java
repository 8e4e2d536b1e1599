package org.espalier.film;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** A photo or clip that its holder may look at. */
public final class OpenPicture {

    private static final int MOST_PIXELS = 1600;

    private final ClinicalPicture picture;
    private final Path file;

    OpenPicture(ClinicalPicture picture, Path file) {
        this.picture = picture;
        this.file = file;
    }

    public ClinicalPicture picture() {
        return picture;
    }

    /** The file of a clip, as it came. */
    Path clip() {
        return file;
    }

    /** A photo upright, without what the camera wrote beside it. */
    byte[] photo() {
        try {
            return Photos.toJpeg(file, MOST_PIXELS);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
