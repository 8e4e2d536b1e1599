package org.espalier.treatment;

import java.util.Optional;

/**
 * Why something is not taken down as it stands.
 *
 * @param place the act, from 0; of a plan or another fact 0
 * @param wanted the side of the bone that the deformity asks for
 * @param deformity what it was measured or planned against
 */
public record Stop(Reason reason, int place, Optional<PlateSide> wanted, Optional<MeasuredDeformity> deformity) {

    /** What is the matter. */
    public enum Reason {
        /** The day lies before birth or after today. */
        DAY_IMPOSSIBLE,
        /** The plan is for the other limb. */
        PLANNED_ON_OTHER_LIMB,
        /** The plan is for the other side of the bone. */
        PLANNED_ON_OTHER_SIDE_OF_BONE,
        /** The tether would let the deformity of the plan grow. */
        AGAINST_THE_PLAN,
        /** The tether would let the deformity of the latest reading grow. */
        AGAINST_THE_READING,
        /** What it is done to is not in on that day. */
        NOT_IN,
        PLACED_TWICE,
        ANOTHER_PLACE,
        ANOTHER_IMPLANT,
        SCREW_OUT_ALREADY,
        SCREW_IN_ALREADY,
        MATURE_ALREADY,
        IMPLANT_UNSETTLED,
        /** Care cannot end straight while something is in. */
        STRAIGHT_WITH_IMPLANT,
        /** Somebody else corrected or withdrew the earlier one meanwhile. */
        SUPERSEDED_MEANWHILE;

        static Reason of(Misfit.Kind kind) {
            return valueOf(kind.name());
        }

        /** Whether a deliberate reversal, agreed by two, lets it pass. */
        public boolean isReversible() {
            return this == AGAINST_THE_PLAN || this == AGAINST_THE_READING;
        }
    }

    static Stop of(Reason reason, int place) {
        return new Stop(reason, place, Optional.empty(), Optional.empty());
    }
}
