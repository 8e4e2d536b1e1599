package org.espalier.patient;

import java.util.UUID;

/** Names a child of the network. */
public record ChildId(UUID value) {}
