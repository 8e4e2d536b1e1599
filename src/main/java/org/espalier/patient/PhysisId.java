package org.espalier.patient;

import java.util.UUID;

/** Names one growth plate of a child. */
public record PhysisId(UUID value) {}
