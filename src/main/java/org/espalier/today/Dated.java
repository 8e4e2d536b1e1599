package org.espalier.today;

import java.time.LocalDate;
import org.espalier.patient.Child;

/**
 * A child of a list and the day the list is about.
 *
 * @param about what of it, as the list's own texts name it; empty where the day says all
 */
public record Dated(Child child, LocalDate day, String about) {}
