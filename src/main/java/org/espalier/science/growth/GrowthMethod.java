package org.espalier.science.growth;

/**
 * How growth that is left is reckoned. Sources differ by a factor of 1.4 to 1.5 for one child: methods stand side by
 * side.
 */
public enum GrowthMethod {
    /** Mean length at 18 years less that of the age, by the 1964 lengths, times the plate's share. */
    LENGTHS_BY_AGE,
    /** The bone's own length times multiplier less one, times the plate's share. */
    MULTIPLIER,
    /** The same millimetres every year until growth ends; for the knee's plates only. */
    YEARLY
}
