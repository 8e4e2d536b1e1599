package org.espalier.demo;

import java.util.OptionalInt;

/**
 * An operation that is wanted and not done yet.
 *
 * @param ageMonths of the child on the day it was decided
 * @param deed what is wanted
 * @param theatreInDays after the first day of the demonstration; empty when theatre was not asked for
 */
record DemoPlan(int ageMonths, DemoDeed deed, OptionalInt theatreInDays) {}
