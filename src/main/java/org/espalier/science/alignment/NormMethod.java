package org.espalier.science.alignment;

import java.util.Locale;

/** How a norm was measured. Norms of different methods are never compared or joined. */
public enum NormMethod {
    /** On the child, by goniometer, photograph or rule. */
    CLINICAL,
    /** On a film, by the shaft lines. */
    ANATOMIC_FILM,
    /** On a film, by the centres of hip, knee and ankle. */
    MECHANICAL_FILM;

    /** The file of its norms. */
    String table() {
        return "norms-" + name().toLowerCase(Locale.ROOT).replace('_', '-') + ".csv";
    }
}
