package org.espalier.patient;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A finding as it was written down: by whom, when, and in place of what.
 *
 * @param on the day it was measured or found
 * @param finding null when the fact only withdraws the one it supersedes
 * @param by name of who wrote it down; null for the house itself
 * @param supersedes the fact this one stands in place of
 * @param reason why, when it supersedes one
 */
public record Fact<F extends Finding>(
        FactId id,
        LocalDate on,
        @Nullable F finding,
        @Nullable String by,
        Instant at,
        @Nullable FactId supersedes,
        @Nullable String reason) {}
