package org.espalier.patient;

/** What came of saving who a child is. */
public sealed interface SaveOutcome {

    /** It is kept. */
    record Saved(Child child) implements SaveOutcome {}

    /** Nothing is kept: another child of the hospital has the local number. */
    record NumberTaken(Child holder) implements SaveOutcome {}

    /** Nothing is kept: somebody else changed the child meanwhile. */
    record ChangedMeanwhile(Child theirs) implements SaveOutcome {}
}
