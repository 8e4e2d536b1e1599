package org.espalier.followup;

/** What came of changing a visit. */
public sealed interface VisitOutcome {

    /** It is kept; the visit that is open now. */
    record Done(Visit open) implements VisitOutcome {}

    /** Nothing is kept: somebody else changed the visit meanwhile. */
    record ChangedMeanwhile() implements VisitOutcome {}

    /** Nothing is kept: a child in care always has a next visit, and none was named. */
    record NextMissing() implements VisitOutcome {}

    /** Nothing is kept: care ends as mature only when growth plates were seen closed on a film. */
    record NotSeenClosed() implements VisitOutcome {}

    /** Nothing is kept: something is in that could still turn a bone, so the limb cannot be let go as straight. */
    record ImplantIn() implements VisitOutcome {}
}
