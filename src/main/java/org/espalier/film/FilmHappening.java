package org.espalier.film;

import org.jspecify.annotations.Nullable;

/** What can happen to an order of a film. */
public sealed interface FilmHappening {

    /** Why an exposure cannot be used. */
    enum RejectReason {
        PATELLA_NOT_FORWARD,
        KNEE_BENT,
        CUT_OFF,
        MOVED,
        MARKER_MISSING,
        BALL_MISSING,
        TOO_LIGHT_OR_DARK,
        OTHER
    }

    /**
     * An exposure that cannot be used; the film is still to be taken.
     *
     * @param dose null when it was not recorded
     */
    record Rejected(RejectReason why, @Nullable DoseAreaProduct dose) implements FilmHappening {}

    /**
     * The film is taken.
     *
     * @param dose null when it was not recorded
     */
    record Taken(@Nullable DoseAreaProduct dose) implements FilmHappening {}

    /** The child was there and no film was taken, or nobody came. */
    record NotTaken(String reason) implements FilmHappening {

        public NotTaken {
            demand(reason);
        }
    }

    /** Who asked for it no longer does. */
    record Withdrawn(String reason) implements FilmHappening {

        public Withdrawn {
            demand(reason);
        }
    }

    /** Whether nothing is left to do. */
    default boolean isEnd() {
        return !(this instanceof Rejected);
    }

    private static void demand(String reason) {
        if (reason.isBlank() || reason.length() > FilmWish.REASON_LENGTH) {
            throw new IllegalArgumentException(
                    "Said with a reason of at most " + FilmWish.REASON_LENGTH + " characters");
        }
    }
}
