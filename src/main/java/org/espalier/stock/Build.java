package org.espalier.stock;

/** How a screw or wire is made inside. */
public enum Build {
    SOLID,
    CANNULATED
}
