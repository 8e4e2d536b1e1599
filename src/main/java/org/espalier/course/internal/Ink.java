package org.espalier.course.internal;

import org.espalier.science.quantity.Side;

/** The colours of the screen, on paper; none stands alone. */
final class Ink {

    static final String INK = "#1f2a24";
    static final String QUIET = "#4a564f";
    static final String RULE = "#c9c0ad";
    static final String GRID = "#e6e1d6";
    static final String BAND = "#dcebe1";
    static final String BAND_EDGE = "#9fbfae";
    static final String BARK = "#7a5a3a";
    static final String BERRY = "#9c2f3a";

    private static final String LAKE = "#1b6f8a";
    private static final String PLUM = "#8a3b6e";

    private Ink() {}

    static String of(Side side) {
        return side == Side.RIGHT ? LAKE : PLUM;
    }
}
