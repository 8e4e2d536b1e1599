package org.espalier.prognosis;

/** Whose rates a centre forecasts by. */
public enum RateSource {
    /** Those its own limbs taught. */
    OWN,
    PUBLISHED
}
