package org.espalier.access;

import java.time.Instant;
import java.util.UUID;

/**
 * A session of the caller that has not ended.
 *
 * @param device the browser and the system, as the browser names them
 * @param used when its person last did something, to the minute
 * @param here whether it is the one that asks
 */
public record OpenSession(UUID id, String device, Instant began, Instant used, boolean here) {}
