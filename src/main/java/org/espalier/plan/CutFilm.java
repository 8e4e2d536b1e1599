package org.espalier.plan;

import java.time.LocalDate;
import org.espalier.film.FilmId;
import org.espalier.science.quantity.Side;

/**
 * The film of a limb to be cut, and a cut to start from: across the upper tibia, its hinge in the middle of the bone, not turned.
 *
 * @param takenOn the day it was taken
 */
public record CutFilm(FilmId film, LocalDate takenOn, Side side, CutRequest start) {}
