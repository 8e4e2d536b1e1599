package org.espalier.access;

import java.time.ZoneId;

/** A hospital; its zone decides what "today" and "late" mean there. */
public record Site(SiteId id, String code, String name, ZoneId zone) {}
