package org.espalier.cost;

import java.util.Optional;
import org.espalier.access.SiteId;

/**
 * A pathway at one hospital in one year, in one currency.
 *
 * @param currency the code; empty when no charge of these limbs has a price
 * @param limbs how many limbs whose care ended in the year, told only of five children or more
 * @param figures empty when there are fewer
 */
public record PathwayLine(
        SiteId site,
        int year,
        Pathway pathway,
        Optional<String> currency,
        Cell limbs,
        Optional<PathwayFigures> figures) {}
