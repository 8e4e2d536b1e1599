package org.espalier.cost;

/** What kind of fact a charge follows from. */
public enum ChargeSource {
    PROCEDURE,
    VISIT,
    FILM,
    IMAGING,
    LETTER,
    /** Written by the cost administrator, with a reason. */
    HAND
}
