package org.espalier.followup;

import java.util.UUID;

/** Names a visit of a child. */
public record VisitId(UUID value) {}
