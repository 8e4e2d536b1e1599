package org.espalier.reading;

import java.time.LocalDate;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/** A number that stands, read from an earlier film of the same child. */
record EarlierNumber(LocalDate day, Side side, Quantity quantity, double value) {}
