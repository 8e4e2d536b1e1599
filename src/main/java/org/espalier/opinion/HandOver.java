package org.espalier.opinion;

import java.util.UUID;
import org.espalier.access.StaffId;

/** A colleague's wish to hand the question on; it waits for the asker to agree. */
public record HandOver(UUID id, StaffId from, String fromName, StaffId to, String toName, boolean agreed) {}
