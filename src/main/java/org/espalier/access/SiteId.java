package org.espalier.access;

import java.util.UUID;

/** Names a hospital of the network. */
public record SiteId(UUID value) {}
