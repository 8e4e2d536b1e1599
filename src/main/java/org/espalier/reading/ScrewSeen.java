package org.espalier.reading;

import static java.util.Objects.requireNonNullElse;

import org.espalier.science.quantity.Side;

/** What a reader says of one screw of a plate at the knee, as it is asked of each. */
public record ScrewSeen(Side side, Plate plate, Screw screw, Seen exposed, Seen bent, Seen broken, Seen loose) {

    /** The physis that a plate bridges. */
    public enum Plate {
        DISTAL_FEMUR("FEMUR_"),
        PROXIMAL_TIBIA("TIBIA_");

        private final String bone;

        Plate(String bone) {
            this.bone = bone;
        }

        /** Whether a landmark or quantity of an implant belongs to it. */
        boolean bears(String name) {
            return name.startsWith(bone);
        }
    }

    /** Which of its screws. */
    public enum Screw {
        METAPHYSIS,
        EPIPHYSIS
    }

    public ScrewSeen {
        exposed = requireNonNullElse(exposed, Seen.NOT_RECORDED);
        bent = requireNonNullElse(bent, Seen.NOT_RECORDED);
        broken = requireNonNullElse(broken, Seen.NOT_RECORDED);
        loose = requireNonNullElse(loose, Seen.NOT_RECORDED);
    }

    /** A screw of which nothing was said yet. */
    public static ScrewSeen asked(Side side, Plate plate, Screw screw) {
        return new ScrewSeen(
                side, plate, screw, Seen.NOT_RECORDED, Seen.NOT_RECORDED, Seen.NOT_RECORDED, Seen.NOT_RECORDED);
    }

    public ScrewSeen withExposed(Seen exposed) {
        return new ScrewSeen(side, plate, screw, exposed, bent, broken, loose);
    }

    public ScrewSeen withBent(Seen bent) {
        return new ScrewSeen(side, plate, screw, exposed, bent, broken, loose);
    }

    public ScrewSeen withBroken(Seen broken) {
        return new ScrewSeen(side, plate, screw, exposed, bent, broken, loose);
    }

    public ScrewSeen withLoose(Seen loose) {
        return new ScrewSeen(side, plate, screw, exposed, bent, broken, loose);
    }

    /** Whether something is not answered yet. */
    boolean hasOpenQuestion() {
        return exposed == Seen.NOT_RECORDED
                || bent == Seen.NOT_RECORDED
                || broken == Seen.NOT_RECORDED
                || loose == Seen.NOT_RECORDED;
    }
}
