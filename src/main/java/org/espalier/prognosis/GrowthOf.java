package org.espalier.prognosis;

import org.espalier.science.growth.GrowthMethod;
import org.espalier.science.quantity.Length;

/**
 * Growth left at a physis by one way of reckoning.
 *
 * @param low a quarter less
 * @param high a quarter more
 */
public record GrowthOf(GrowthMethod method, Length left, Length low, Length high) {}
