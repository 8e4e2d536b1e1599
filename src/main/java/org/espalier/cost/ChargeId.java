package org.espalier.cost;

import java.util.UUID;

/** Names a charge. */
public record ChargeId(UUID value) {}
