package org.espalier.stock;

import java.util.UUID;

/** Names a lot. */
public record LotId(UUID value) {}
