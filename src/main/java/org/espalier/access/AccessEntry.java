package org.espalier.access;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One entry of the access log.
 *
 * @param staff who; null for a job of the house and for a sign-in under a name that is not known
 * @param site whose privacy officer may read it; null for what belongs to no site
 * @param subject what was looked at, refused or changed, naming nobody
 * @param about the colleague it was done to, by the operator
 */
record AccessEntry(
        UUID id,
        Instant at,
        @Nullable StaffId staff,
        @Nullable SiteId site,
        AccessDeed deed,
        String subject,
        List<UUID> children,
        @Nullable UUID film,
        @Nullable StaffId about) {}
