package org.espalier.outcomes;

/** Ages at the plate, in groups large enough to be counted. */
public enum AgeBand {
    UNDER_6,
    FROM_6,
    FROM_10,
    FROM_13
}
