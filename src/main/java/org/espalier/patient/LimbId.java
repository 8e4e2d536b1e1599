package org.espalier.patient;

import java.util.UUID;

/** Names one leg of a child. */
public record LimbId(UUID value) {}
