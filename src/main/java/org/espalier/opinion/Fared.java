package org.espalier.opinion;

import java.time.Instant;
import java.util.Optional;

/**
 * How a piece of the caller's own advice fared.
 *
 * @param outcome what came of it; empty while it is not known
 */
public record Fared(
        ThreadId thread, Advice advice, Sureness sure, Instant givenAt, Advice decided, Optional<Outcome> outcome) {}
