package org.espalier.cost;

import java.util.UUID;

/** Names a tariff. */
public record TariffId(UUID value) {}
