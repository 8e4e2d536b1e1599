package org.espalier.outcomes;

/** How the time ended in which a growth plate was held; each ends in one way. */
public enum Came {
    /** Nothing holds any more, or the growth plate was seen closed, within the band of the target. */
    STRAIGHT,
    /** The same, past the band. */
    OVERSHOT,
    /** Taken out before the band was reached. */
    SHORT,
    /** Seen closed before the band was reached. */
    GROWTH_ENDED,
    /** Seen broken, or exchanged or moved. */
    FAILED,
    /** Taken out or closed, and no film of the half year before says where it stood. */
    NOT_FILMED;

    /** Degrees either side of the target within which a growth plate counts as come to it. A choice of this house. */
    public static final double BAND_DEGREES = 2;

    /** How a growth plate stood that was released, or closed, so many degrees past its target. */
    static Came standing(double past, boolean closed) {
        if (past > BAND_DEGREES) {
            return OVERSHOT;
        }
        if (past >= -BAND_DEGREES) {
            return STRAIGHT;
        }
        return closed ? GROWTH_ENDED : SHORT;
    }

    /** Whether a film told where it stood when it was let go. */
    public boolean isMeasured() {
        return this == STRAIGHT || this == OVERSHOT || this == SHORT || this == GROWTH_ENDED;
    }
}
