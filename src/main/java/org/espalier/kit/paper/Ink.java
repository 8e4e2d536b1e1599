package org.espalier.kit.paper;

import org.espalier.science.quantity.Side;

/** The colours of the screen, on paper; none stands alone. */
public final class Ink {

    public static final String INK = "#1f2a24";
    public static final String QUIET = "#4a564f";
    public static final String RULE = "#c9c0ad";
    /** Lines behind, bone, and the range of a study. */
    public static final String PALE = "#e6e1d6";

    public static final String BAND = "#dcebe1";
    public static final String BAND_EDGE = "#9fbfae";
    public static final String BARK = "#7a5a3a";
    public static final String BERRY = "#9c2f3a";

    private static final String LAKE = "#1b6f8a";
    private static final String PLUM = "#8a3b6e";

    private Ink() {}

    public static String of(Side side) {
        return side == Side.RIGHT ? LAKE : PLUM;
    }
}
