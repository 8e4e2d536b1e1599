package org.espalier.plan;

import java.util.UUID;

/** A saved comparison of options. */
public record ComparisonId(UUID value) {}
