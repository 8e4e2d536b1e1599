package org.espalier.opinion;

import org.espalier.access.StaffId;

/** A surgeon of the network. */
public record Colleague(StaffId id, String name, String hospital) {}
