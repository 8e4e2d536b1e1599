package org.espalier.stock;

import java.util.UUID;

/** Names a shelf. */
public record ShelfId(UUID value) {}
