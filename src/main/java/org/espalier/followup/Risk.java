package org.espalier.followup;

/** What one more month of waiting would risk. */
public sealed interface Risk {

    /** The chance of going past the target, 0 to 1, when the look is in time and when it comes a month later. */
    record PastTarget(double inTime, double monthLater) implements Risk {}

    /** The window is closing, or has. */
    record WindowCloses() implements Risk {}

    /** No forecast tells. */
    record NotKnown() implements Risk {}
}
