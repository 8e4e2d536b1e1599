package org.espalier.reading;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.film.FilmId;

/** A film that one other has read, so that the caller may read it blind; whose it is, is not told. */
public record UnpairedFilm(FilmId film, ReadingId reading, Optional<LocalDate> takenOn, String readerName) {}
