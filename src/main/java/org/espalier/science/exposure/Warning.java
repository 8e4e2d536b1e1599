package org.espalier.science.exposure;

import java.util.OptionalDouble;

/**
 * What has to be said beside a film.
 *
 * @param kind what
 * @param size how large, in the kind's unit; empty where there is no size
 */
public record Warning(Kind kind, OptionalDouble size) {

    /** What is warned of. */
    public enum Kind {
        /** The stance was not recorded. */
        STANCE_NOT_RECORDED,
        /** Lying: not to be joined with standing films. */
        SUPINE,
        /** The flexion was not recorded. */
        FLEXION_NOT_RECORDED,
        /** A flexed knee shortens the limb: size in millimetres. */
        FLEXION_SHORTENS,
        /** The turn cannot be told by the patella. */
        TURN_UNKNOWN,
        /** Where the patella looks was not recorded: size in degrees for a single bone that is turned. */
        TURN_NOT_RECORDED,
        /** The view was not recorded. */
        VIEW_NOT_RECORDED,
        /** How the picture was made was not recorded. */
        TECHNIQUE_NOT_RECORDED,
        /** From behind: the film may lie mirrored. */
        FROM_BEHIND,
        /** Joined: look for a step at each seam; size in degrees for a step of 3 mm. */
        STITCH_STEP,
        /** Joined: a ball calibrates the part it lies in. */
        BALL_OF_ONE_PART,
        /** By a moving slit: near natural size; look for waves in the cortex. */
        SLOT_SCAN,
        /** One limb: no length difference and no comparison with the other side; link the film of the same day. */
        SINGLE_LIMB,
        /** One limb: side by fibular head and lead marker, as landmarks alone cannot catch a mirrored film. */
        SIDE_BY_FIBULA,
        /** One limb and no ball: millimetres rest on the film's own scale. */
        NO_BALL,
        /** The ball does not lie at the bone's height: size in percent of every length. */
        BALL_OFF_BONE,
        /** Where the ball lies was not recorded. */
        BALL_LEVEL_NOT_RECORDED,
        /** Whether the side marker can be read was not recorded. */
        MARKER_NOT_RECORDED,
        /** Whether the joint surfaces are bone was not recorded. */
        OSSIFICATION_NOT_RECORDED,
        /** The side marker is not there or not readable. */
        SIDE_NOT_PROVEN,
        /** Contrast shows the cartilage: joint lines are those of cartilage. */
        CONTRAST,
        /** Physeal-line angles: own names, never trended with joint angles, no established change limit. */
        PHYSEAL_LINES
    }

    static Warning of(Kind kind) {
        return new Warning(kind, OptionalDouble.empty());
    }

    static Warning of(Kind kind, double size) {
        return new Warning(kind, OptionalDouble.of(size));
    }
}
