package org.espalier.prognosis;

import java.time.LocalDate;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/**
 * A number of a limb on one film, by the latest reading that stands.
 *
 * @param value in the quantity's unit
 */
public record FilmAngle(LocalDate on, Side side, Quantity quantity, double value) {}
