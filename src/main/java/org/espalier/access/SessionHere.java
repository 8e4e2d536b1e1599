package org.espalier.access;

import java.util.Optional;
import java.util.UUID;

/** The session that asks, as the door knows it. */
public interface SessionHere {

    /** Its id; empty for work that comes from no session. */
    Optional<UUID> id();
}
