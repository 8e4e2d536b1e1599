package org.espalier.opinion;

import java.util.List;

/**
 * Something drawn on a film.
 *
 * @param points one for a point, two for a line, three for an angle with its corner in the middle; pixels of the film
 * @param label what it means, in a few words; may be empty
 */
public record Drawing(Kind kind, List<Spot> points, String label) {

    /** The most things one person draws on a film. */
    public static final int MOST = 100;

    private static final int LONGEST_LABEL = 80;

    /** What is drawn. */
    public enum Kind {
        POINT(1),
        LINE(2),
        ANGLE(3);

        private final int points;

        Kind(int points) {
            this.points = points;
        }
    }

    /** A place on the film in its pixels. */
    public record Spot(double x, double y) {

        private static final double FARTHEST = 100_000;

        public Spot {
            if (!(Math.abs(x) <= FARTHEST && Math.abs(y) <= FARTHEST)) {
                throw new IllegalArgumentException("No film reaches to " + x + ", " + y);
            }
        }
    }

    public Drawing {
        points = List.copyOf(points);
        label = label.strip();
        if (points.size() != kind.points) {
            throw new IllegalArgumentException(kind + " has " + kind.points + " points, not " + points.size());
        }
        if (label.length() > LONGEST_LABEL) {
            throw new IllegalArgumentException("A label has at most 80 characters");
        }
    }
}
