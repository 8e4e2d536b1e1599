package org.espalier.outcomes;

/** Years of growth left at the plate, in groups large enough to be counted. */
public enum GrowthBand {
    UNDER_2,
    FROM_2,
    FROM_4,
    NOT_KNOWN
}
