package org.espalier.opinion;

import java.util.List;
import org.espalier.film.Cover;
import org.espalier.film.PictureId;

/** A photo to be shown as a copy, and what of it was covered; or a clip, in which nothing can be. */
public record PictureToShow(PictureId picture, List<Cover> covers) {

    public PictureToShow {
        covers = List.copyOf(covers);
    }
}
