package org.espalier.platform;

import java.util.UUID;

/** On whose behalf the database is asked. The database derives every right from it. */
public sealed interface Caller {

    /** A member of staff, or the archive of a site, signed in. */
    record Staff(UUID staff) implements Caller {}

    /** A job of the house at work for one site, for a stated purpose. */
    record SystemAtSite(UUID site, String purpose) implements Caller {}
}
