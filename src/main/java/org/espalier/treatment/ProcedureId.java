package org.espalier.treatment;

import java.util.UUID;

/** Names one treatment on one day, with all its acts. */
public record ProcedureId(UUID value) {}
