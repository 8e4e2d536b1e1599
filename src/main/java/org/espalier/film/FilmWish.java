package org.espalier.film;

import org.espalier.patient.AffectedSides;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/** What is asked for on a day: a film, or none. That none is needed is said too, so that none is taken by habit. */
public sealed interface FilmWish {

    /** The longest reason that is kept. */
    int REASON_LENGTH = 400;

    /**
     * A film.
     *
     * @param lift under one foot; null when none
     * @param ball whether a ball of known size is to be on the film
     * @param reason what hangs on it; null when it was not said
     */
    record Film(
            AffectedSides sides,
            FilmProtocol protocol,
            @Nullable Lift lift,
            boolean ball,
            @Nullable String reason) implements FilmWish {

        public Film {
            reason = tidy(reason);
        }
    }

    /** No film at this visit. */
    record NoFilm(String reason) implements FilmWish {

        public NoFilm {
            var tidy = tidy(reason);
            if (tidy == null) {
                throw new IllegalArgumentException("That no film is needed is said with its reason");
            }
            reason = tidy;
        }
    }

    /**
     * A block under one foot, so that the child stands level.
     *
     * @param height 1 to 150 mm
     */
    record Lift(Side side, Length height) {

        /** The highest block that is taken. */
        public static final Length HIGHEST = Length.ofMillimetres(150);

        public Lift {
            if (height.millimetres() < 1 || height.compareTo(HIGHEST) > 0) {
                throw new IllegalArgumentException("A lift is 1 to 150 mm high, not " + height.millimetres());
            }
        }
    }

    private static @Nullable String tidy(@Nullable String reason) {
        var tidy = reason == null ? "" : reason.strip();
        if (tidy.length() > REASON_LENGTH) {
            throw new IllegalArgumentException("Longer than " + REASON_LENGTH + " characters");
        }
        return tidy.isEmpty() ? null : tidy;
    }
}
