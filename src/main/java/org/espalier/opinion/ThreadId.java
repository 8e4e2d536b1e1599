package org.espalier.opinion;

import java.util.UUID;

/** Names a case that was put before colleagues. */
public record ThreadId(UUID value) {}
