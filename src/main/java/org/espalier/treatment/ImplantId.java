package org.espalier.treatment;

import java.util.UUID;

/** Names what was put in: a plate with its screws, a staple, a screw. It keeps its name through every correction. */
public record ImplantId(UUID value) {}
