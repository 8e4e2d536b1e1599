package org.espalier.patient;

import java.util.UUID;

/** Names one fact about a child. */
public record FactId(UUID value) {}
