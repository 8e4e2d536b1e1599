package org.espalier.today;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.patient.Child;

/**
 * A child of whom no film was taken for long.
 *
 * @param lastFilm empty when none was ever taken
 */
public record WithoutFilm(Child child, Optional<LocalDate> lastFilm) {}
