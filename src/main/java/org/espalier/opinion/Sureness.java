package org.espalier.opinion;

/** How sure somebody is of their advice. */
public enum Sureness {
    SURE,
    FAIRLY_SURE,
    UNSURE
}
