package org.espalier.access;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A line of the access log as the privacy officer reads it.
 *
 * @param site whose record it touched; null for what belongs to no site
 * @param who null for a job of the house, and for a name nobody has
 * @param subject what was looked at, refused or changed
 * @param about the colleague it was done to
 * @param children whose records
 * @param sealed whether a seal covers it already
 */
public record AccessLine(
        Instant at,
        @Nullable SiteId site,
        @Nullable String who,
        AccessDeed deed,
        String subject,
        @Nullable String about,
        List<UUID> children,
        boolean sealed) {}
