package org.espalier.opinion;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** A question to any surgeon of the network: what is asked, not what is shown. */
public record OpenCall(
        ThreadId id, String asker, String hospital, List<Advice> wanted, Instant askedAt, LocalDate dueBy) {}
