package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * Something about a reading that its reader should know before signing.
 *
 * @param side the limb meant; absent for the film as a whole
 * @param values what the text mentions, in order: numbers, or codes of landmarks
 */
public record Caution(Kind kind, @Nullable Side side, List<Object> values) {

    public enum Kind {
        /** The edge points show too little of the head. Values: covered arc in degrees. */
        SHORT_ARC(Severity.SOON),
        /** No circle goes through the edge points. */
        NO_CIRCLE(Severity.SOON),
        /** A line's medial and lateral ends contradict the others. Values: the {@link JointLine}. */
        ENDS_EXCHANGED(Severity.HARM),
        /** The landmarks do not tell which way is lateral. */
        LATERAL_UNCLEAR(Severity.HARM),
        /** This limb's lateral points towards the other limb: all its medial and lateral ends are exchanged. */
        LATERAL_INWARD(Severity.HARM),
        /** This limb lies as the other one does on a film that faces the reader: sides exchanged, or film mirrored. */
        AS_OTHER_SIDE(Severity.SOON),
        /** Two landmarks of one line lie on each other. */
        POINTS_COINCIDE(Severity.SOON),
        /** Lengths are those at the detector, where the limb is shown enlarged. */
        DETECTOR_PLANE(Severity.NOTE),
        /** No scale, no lengths. */
        UNCALIBRATED(Severity.NOTE),
        /** The ball is to give the scale but its edge or diameter is not there yet. */
        BALL_MISSING(Severity.SOON),
        /** The ball's scale and the film's own differ by more than magnification explains. Values: ratio. */
        BALL_AGAINST_TAGS(Severity.SOON),
        /** The flexed knee shortens the limb and makes its axis doubtful. Values: degrees. */
        FLEXED(Severity.SOON),
        /** Lying down: the joint line convergence is not told and the course does not join this film. */
        SUPINE(Severity.NOTE);

        private final Severity severity;

        Kind(Severity severity) {
            this.severity = severity;
        }

        public Severity severity() {
            return severity;
        }
    }

    /** How much it matters. What does harm must be mended before signing. */
    public enum Severity {
        NOTE,
        SOON,
        HARM
    }

    public Caution {
        values = List.copyOf(values);
    }

    static Caution ofFilm(Kind kind, Object... values) {
        return new Caution(kind, null, List.of(values));
    }

    static Caution ofLimb(Kind kind, Side side, Object... values) {
        return new Caution(kind, side, List.of(values));
    }

    public Optional<Side> limb() {
        return Optional.ofNullable(side);
    }

    public boolean isHarmful() {
        return kind.severity() == Severity.HARM;
    }
}
