package org.espalier.access;

import java.util.UUID;

/** Names a member of staff, or the archive of a site. */
public record StaffId(UUID value) {}
