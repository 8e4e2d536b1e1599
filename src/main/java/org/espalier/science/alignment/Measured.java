package org.espalier.science.alignment;

import java.util.Set;

/** What came of measuring one quantity: its value, or why there is none. */
public sealed interface Measured {

    /**
     * A value.
     *
     * @param value in the unit of its quantity, finite
     */
    record Value(double value) implements Measured {

        /**
         * Checks that the value is a number.
         *
         * @throws IllegalArgumentException if not finite
         */
        public Value {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("A measured value is finite, not " + value);
            }
        }
    }

    /**
     * No value.
     *
     * @param reason why
     * @param landmarks the landmarks to set or to look at again; empty where none is at fault
     */
    record Absent(Reason reason, Set<Landmark> landmarks) implements Measured {

        /** Keeps its own copy of the landmarks. */
        public Absent {
            landmarks = Set.copyOf(landmarks);
        }
    }

    /** Why a quantity has no value. */
    enum Reason {
        /** Landmarks it needs are not set. */
        LANDMARKS_MISSING,
        /** It is a length and the film's scale is not known. */
        UNCALIBRATED,
        /** Two points that give a line its direction lie on each other. */
        POINTS_COINCIDE,
        /** The lines that should cross are parallel. */
        LINES_PARALLEL,
        /** Which way is lateral cannot be told from the landmarks. */
        LATERAL_UNCLEAR,
        /** Against the other landmarks, its medial and lateral ends look exchanged. */
        ENDS_EXCHANGED
    }
}
