package org.espalier.platform;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What is done every night at each hospital, in chunks. It runs as the house there. */
public interface NightWork {

    /** Looked at in one transaction. */
    int CHUNK = 500;

    /**
     * A chunk that was done.
     *
     * @param looked by id, in their order
     * @param renewed how many of them were worked out anew
     */
    record Chunk(List<UUID> looked, int renewed) {}

    /** Names the work and why the house is there. */
    String name();

    /** The hospitals, for which no caller is needed. */
    List<UUID> sites();

    /** The day at a hospital. */
    LocalDate today(UUID site);

    /** What comes before the first chunk of a night, in its transaction. */
    default void begin(UUID site) {}

    /** Does the next {@link #CHUNK} by id; fewer are the last. */
    Chunk next(UUID site, Night before);
}
