package org.espalier.opinion;

import java.time.Instant;

/**
 * What was decided.
 *
 * @param text in words
 * @param decidedBy by whom
 */
public record Closing(Advice decided, String text, String decidedBy, Instant at) {}
