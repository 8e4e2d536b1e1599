package org.espalier.access;

import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/** What came of asking for emergency access. */
public sealed interface EmergencyAnswer {

    /** The child is open to the caller until the time. */
    record Taken(UUID child, Instant until) implements EmergencyAnswer {}

    /** No child of that number and day of birth is there, or the caller works there; which is not told. */
    record NotFound() implements EmergencyAnswer {}

    /** Too many questions: wait before the next. */
    record Wait(Duration left) implements EmergencyAnswer {}
}
