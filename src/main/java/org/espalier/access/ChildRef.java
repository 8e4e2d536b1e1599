package org.espalier.access;

import java.util.UUID;

/** A child as the access log names it: by id, with the site whose record was looked at. */
public record ChildRef(SiteId site, UUID child) {}
