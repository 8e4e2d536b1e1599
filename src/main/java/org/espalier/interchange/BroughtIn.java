package org.espalier.interchange;

import java.time.Instant;
import java.util.Optional;

/**
 * That records were brought in.
 *
 * @param by who had it done; empty for the command
 * @param counts of each file in words
 */
public record BroughtIn(Optional<String> by, Instant at, String counts) {}
