package org.espalier.science.planning;

/** How a cut runs from one side of a bone to the other, seen from the front. */
public enum CutKind {
    /** Straight from end to end: a wedge opens or closes as the lower part turns. */
    STRAIGHT,
    /** Round about the hinge (a dome): the lower part slides along the arc as it turns, and nothing opens or closes. */
    ROUND
}
