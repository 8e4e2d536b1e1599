package org.espalier.followup;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * How a visit ended.
 *
 * @param on the day it is about
 */
public record Closing(
        VisitState state, LocalDate on, Optional<VisitReason> reason, Optional<String> note, Instant recordedAt) {}
