package org.espalier.patient;

/** How a list of children is ordered. */
public enum ChildOrder {
    /** By family name, then given name. */
    NAME,
    /** The youngest first. */
    YOUNGEST,
    /** The one registered last first. */
    LATEST
}
