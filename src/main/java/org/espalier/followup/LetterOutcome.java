package org.espalier.followup;

/** What came of writing a letter. */
public sealed interface LetterOutcome {

    /** The letter as PDF, or the date as a calendar file. */
    record Written(byte[] bytes) implements LetterOutcome {}

    /** There is none, and why. */
    record Refused(LetterRefusal reason) implements LetterOutcome {}
}
