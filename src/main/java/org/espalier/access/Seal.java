package org.espalier.access;

import java.time.Instant;

/** The newest seal of the access log: its number and when it was set. */
public record Seal(long number, Instant at) {}
