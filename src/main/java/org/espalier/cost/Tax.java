package org.espalier.cost;

/** What a price says of value-added or sales tax. */
public enum Tax {
    EXCLUDED,
    INCLUDED,
    /** None is due. */
    NONE
}
