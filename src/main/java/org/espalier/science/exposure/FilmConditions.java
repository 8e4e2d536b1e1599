package org.espalier.science.exposure;

import java.util.Optional;
import java.util.Set;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * How a film was taken. What is not recorded is never taken for good.
 *
 * @param stance how the child bore weight
 * @param view from which side the beam came
 * @param capture how the picture was made, and of how many parts
 * @param limbs those on the film, at least one
 * @param lift under one foot; empty for none
 * @param patella which way it looks
 * @param flexion of the knee, 0 to 90 degrees; empty when not recorded
 * @param ball on the film; empty for none
 * @param marker whether the lead side marker can be read
 * @param ossification whether the joint surfaces at the knee are bone
 */
public record FilmConditions(
        Stance stance,
        View view,
        Capture capture,
        Set<Side> limbs,
        Optional<Lift> lift,
        Patella patella,
        Optional<Angle> flexion,
        Optional<Ball> ball,
        Marker marker,
        Ossification ossification) {

    /** How the child bore weight. */
    public enum Stance {
        /** Not recorded. */
        NOT_RECORDED,
        /** Standing alone. */
        STANDING_ALONE,
        /** Standing, held by someone. */
        STANDING_HELD,
        /** Lying on the back. */
        SUPINE
    }

    /** From which side the beam came. */
    public enum View {
        /** Not recorded: read as from the front. */
        NOT_RECORDED,
        /** From the front. */
        AP,
        /** From behind. */
        PA,
        /** From the side. */
        LATERAL
    }

    /** How the picture was made. */
    public enum Technique {
        /** Not recorded. */
        NOT_RECORDED,
        /** In one shot. */
        ONE_SHOT,
        /** Joined from several shots. */
        STITCHED,
        /** By a moving slit. */
        SLOT_SCAN,
        /** By an image intensifier: a small picture of one joint. */
        FLUOROSCOPY
    }

    /**
     * How the picture was made.
     *
     * @param technique how
     * @param parts how many shots it was joined from: 2 or more when stitched, otherwise 1
     * @param contrast whether contrast shows the cartilage (arthrogram)
     * @param wavy whether a cortex runs in waves, as when the child moved during a slot scan
     * @param stepped whether a step is seen at a seam of a joined film
     */
    public record Capture(Technique technique, int parts, boolean contrast, boolean wavy, boolean stepped) {

        /** One shot, without contrast. */
        public static final Capture ONE_SHOT = new Capture(Technique.ONE_SHOT, 1, false, false, false);

        /**
         * Checks the number of parts.
         *
         * @throws IllegalArgumentException if it does not fit the technique
         */
        public Capture {
            if (parts < 1 || (technique == Technique.STITCHED) != (parts > 1)) {
                throw new IllegalArgumentException("A film of " + technique + " is not joined from " + parts);
            }
        }
    }

    /**
     * A lift under a foot.
     *
     * @param height above 0
     * @param side whose foot
     */
    public record Lift(Length height, Side side) {}

    /**
     * A ball of known size.
     *
     * @param diameter true, above 0
     * @param offset how far it lies from the bone's height, nearer to the detector positive; empty when not known
     */
    public record Ball(Length diameter, Optional<Length> offset) {}

    /** Which way the patella looks. */
    public enum Patella {
        /** Not recorded. */
        NOT_RECORDED,
        /** Forward. */
        FORWARD,
        /** Turned inwards. */
        TURNED_IN,
        /** Turned outwards. */
        TURNED_OUT,
        /** Not yet bone. */
        NOT_OSSIFIED,
        /** Leaves its groove, so that it tells nothing of the turn. */
        DISLOCATING
    }

    /** Whether the lead side marker can be read. */
    public enum Marker {
        /** Not recorded. */
        NOT_RECORDED,
        /** Seen and readable. */
        READABLE,
        /** Seen, not readable. */
        UNREADABLE,
        /** Not seen. */
        ABSENT
    }

    /** Whether the joint surfaces at the knee are bone. */
    public enum Ossification {
        /** Not recorded: read as bone. */
        NOT_RECORDED,
        /** They are. */
        OSSIFIED,
        /** They are not: the physeal lines are read. */
        UNOSSIFIED
    }

    /**
     * Checks limbs and flexion.
     *
     * @throws IllegalArgumentException if no limb is shown or the flexion is out of range
     */
    public FilmConditions {
        limbs = Set.copyOf(limbs);
        if (limbs.isEmpty()) {
            throw new IllegalArgumentException("A film shows at least one limb");
        }
        flexion.ifPresent(angle -> {
            if (!(angle.degrees() >= 0 && angle.degrees() <= 90)) {
                throw new IllegalArgumentException("A knee on a film is flexed 0 to 90 degrees, not " + angle);
            }
        });
    }

    /** A standing AP film of both limbs in one shot, straight, patellae forward, ball and marker good. */
    public static FilmConditions good() {
        return new FilmConditions(
                Stance.STANDING_ALONE,
                View.AP,
                Capture.ONE_SHOT,
                Set.of(Side.RIGHT, Side.LEFT),
                Optional.empty(),
                Patella.FORWARD,
                Optional.of(Angle.ZERO),
                Optional.of(new Ball(new Length(25), Optional.of(new Length(0)))),
                Marker.READABLE,
                Ossification.OSSIFIED);
    }

    /** Taken in another stance. */
    public FilmConditions withStance(Stance other) {
        return new FilmConditions(other, view, capture, limbs, lift, patella, flexion, ball, marker, ossification);
    }

    /** Taken from another side. */
    public FilmConditions withView(View other) {
        return new FilmConditions(stance, other, capture, limbs, lift, patella, flexion, ball, marker, ossification);
    }

    /** Made in another way. */
    public FilmConditions withCapture(Capture other) {
        return new FilmConditions(stance, view, other, limbs, lift, patella, flexion, ball, marker, ossification);
    }

    /** Showing other limbs. */
    public FilmConditions withLimbs(Set<Side> other) {
        return new FilmConditions(stance, view, capture, other, lift, patella, flexion, ball, marker, ossification);
    }

    /** With the patella looking another way. */
    public FilmConditions withPatella(Patella other) {
        return new FilmConditions(stance, view, capture, limbs, lift, other, flexion, ball, marker, ossification);
    }

    /** With another flexion. */
    public FilmConditions withFlexion(Optional<Angle> other) {
        return new FilmConditions(stance, view, capture, limbs, lift, patella, other, ball, marker, ossification);
    }

    /** With another ball. */
    public FilmConditions withBall(Optional<Ball> other) {
        return new FilmConditions(stance, view, capture, limbs, lift, patella, flexion, other, marker, ossification);
    }

    /** With another marker. */
    public FilmConditions withMarker(Marker other) {
        return new FilmConditions(stance, view, capture, limbs, lift, patella, flexion, ball, other, ossification);
    }

    /** Of a child whose joint surfaces are otherwise. */
    public FilmConditions withOssification(Ossification other) {
        return new FilmConditions(stance, view, capture, limbs, lift, patella, flexion, ball, marker, other);
    }
}
