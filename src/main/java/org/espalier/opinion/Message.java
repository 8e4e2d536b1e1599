package org.espalier.opinion;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.StaffId;

/**
 * Something said, or that happened.
 *
 * @param film the film it is about
 */
public record Message(UUID id, Kind kind, StaffId author, String name, String text, Optional<UUID> film, Instant at) {

    /** What it is. */
    public enum Kind {
        TEXT,
        REMINDER,
        FACTS_ADDED,
        INVITED,
        JOINED,
        HANDED_ON,
        WITHDRAWN,
        CLOSED
    }
}
