package org.espalier.opinion;

import java.util.List;
import org.espalier.film.Cover;
import org.espalier.film.FilmId;

/** A film to be shown as a copy, and what of it was covered. */
public record FilmToShow(FilmId film, List<Cover> covers) {

    public FilmToShow {
        covers = List.copyOf(covers);
    }
}
