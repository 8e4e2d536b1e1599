package org.espalier.opinion;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A case in a list.
 *
 * @param mine whether the caller's hospital asks; else the caller is asked
 * @param unread how many messages and opinions by others the caller has not seen
 * @param answered whether the caller has given an opinion
 * @param reminded whether the asker reminded since the caller last wrote
 * @param outcomeDue which outcome is asked for now: a year after closing, or since the child is mature
 */
public record ThreadLine(
        ThreadId id,
        String question,
        List<Advice> wanted,
        String asker,
        String hospital,
        Instant askedAt,
        LocalDate dueBy,
        boolean mine,
        boolean closed,
        long unread,
        long opinions,
        boolean answered,
        boolean reminded,
        Optional<Outcome.Horizon> outcomeDue) {}
