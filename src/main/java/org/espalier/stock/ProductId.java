package org.espalier.stock;

import java.util.UUID;

/** Names a product. */
public record ProductId(UUID value) {}
