package org.espalier.today;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.patient.Child;

/**
 * A film that nobody has read.
 *
 * @param takenOn empty when it is not known
 */
public record FilmToRead(FilmId film, Child child, Optional<LocalDate> takenOn) {}
