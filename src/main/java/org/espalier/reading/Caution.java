package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.exposure.LayoutCheck;
import org.espalier.science.exposure.LengthCheck;
import org.espalier.science.exposure.Warning;
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
        /** As {@link LayoutCheck.Kind} says. */
        SIDES_SWAPPED_OR_MIRRORED(Severity.SOON),
        /** As {@link LayoutCheck.Kind} says. */
        MEDIAL_LATERAL_SWAPPED(Severity.HARM),
        /** As {@link LayoutCheck.Kind} says. */
        LOOKS_LIKE_OTHER_SIDE(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. */
        FEMUR_UNLIKELY_FOR_AGE(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. */
        TIBIA_UNLIKELY_FOR_AGE(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. */
        PROPORTIONS_IMPOSSIBLE(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. Values: by how many millimetres, since which day. */
        FEMUR_SHRANK(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. Values: by how many millimetres, since which day. */
        TIBIA_SHRANK(Severity.SOON),
        /** As {@link LengthCheck.Finding} says. Values: since which day. */
        PROBABLY_ANOTHER_CHILD(Severity.SOON),
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
        /** What was not recorded of how the film was taken. Values: the {@link Warning.Kind}s. */
        NOT_RECORDED(Severity.NOTE),
        /** As {@link Warning.Kind} says, and so are the following. */
        SUPINE(Severity.NOTE),
        FLEXION_SHORTENS(Severity.SOON),
        TURN_UNKNOWN(Severity.SOON),
        TURN_NOT_RECORDED(Severity.NOTE),
        FROM_BEHIND(Severity.SOON),
        STITCH_STEP(Severity.SOON),
        BALL_OF_ONE_PART(Severity.NOTE),
        SLOT_SCAN(Severity.NOTE),
        SINGLE_LIMB(Severity.NOTE),
        SIDE_BY_FIBULA(Severity.NOTE),
        NO_BALL(Severity.NOTE),
        BALL_OFF_BONE(Severity.SOON),
        SIDE_NOT_PROVEN(Severity.SOON),
        CONTRAST(Severity.NOTE),
        PHYSEAL_LINES(Severity.NOTE),
        /** A screw that was seen is not asked about in full. */
        SCREW_NOT_ASKED(Severity.NOTE),
        /** Screws have stayed behind their joint angle. Values: degrees behind, the limit, since which day. */
        SCREWS_BEHIND(Severity.SOON);

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

    static Caution of(Kind kind, Optional<Side> side, Object... values) {
        return new Caution(kind, side.orElse(null), List.of(values));
    }

    public boolean isHarmful() {
        return kind.severity() == Severity.HARM;
    }
}
