package org.espalier.access;

import java.time.Instant;

/**
 * A passkey of the caller.
 *
 * @param id names it among the caller's; no secret
 * @param label the device it was added on
 */
public record OwnPasskey(String id, String label, Instant added, Instant used) {}
