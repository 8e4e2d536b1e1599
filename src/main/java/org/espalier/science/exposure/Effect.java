package org.espalier.science.exposure;

import java.util.OptionalDouble;

/** What the way a film was taken does to one quantity. */
public sealed interface Effect {

    /** Nothing: it is shown. */
    record Shown() implements Effect {}

    /**
     * It is shown in grey.
     *
     * @param reason why
     * @param error the size of the error in the quantity's unit, either way; empty where it cannot be reckoned
     */
    record Greyed(Reason reason, OptionalDouble error) implements Effect {}

    /**
     * It is not shown.
     *
     * @param reason why
     */
    record Withheld(Reason reason) implements Effect {}

    /** Why. */
    enum Reason {
        /** The knee is flexed by more than 10 degrees. */
        FLEXED,
        /** The limb is turned, as the patella shows. */
        TURNED,
        /** Which way the limb is turned cannot be seen. */
        TURN_UNKNOWN,
        /** A step is seen where the film was joined. */
        STEPPED,
        /** The child lay: the joint does not bear. */
        SUPINE,
        /** The joint surfaces are not yet bone. */
        UNOSSIFIED,
        /** The film was taken from another side than the quantity needs. */
        WRONG_VIEW,
        /** A small picture with a fanning beam, of one joint. */
        FLUOROSCOPY,
        /** The child moved during the scan. */
        MOVED
    }
}
