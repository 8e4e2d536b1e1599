package org.espalier.followup;

/** What came of changing a visit. */
public sealed interface VisitOutcome {

    /** It is kept; the visit that is open now. */
    record Done(Visit open) implements VisitOutcome {}

    /** Nothing is kept: somebody else changed the visit meanwhile. */
    record ChangedMeanwhile() implements VisitOutcome {}

    /** Nothing is kept: a child in care always has a next visit, and none was named. */
    record NextMissing() implements VisitOutcome {}
}
