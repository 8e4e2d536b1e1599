package org.espalier.followup;

/** What came of an attempt to reach a family. */
public enum AttemptOutcome {
    REACHED,
    PROMISED,
    DATE_GIVEN,
    REMINDED,
    NO_ANSWER,
    WRONG_NUMBER,
    SENT,
    CAME_BACK,
    DECLINED,
    MOVED,
    OTHER
}
