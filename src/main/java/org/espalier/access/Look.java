package org.espalier.access;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One look at a child's record.
 *
 * @param caredAt the hospital that has care of the child now
 * @param who null for a job of the house
 * @param worksAt the hospitals the person worked at on that day
 * @param subject what of the record, in a word that names nobody
 * @param sealed whether a seal covers the entry already
 */
public record Look(
        Instant at,
        SiteId caredAt,
        @Nullable StaffId staff,
        @Nullable String who,
        List<SiteId> worksAt,
        AccessDeed deed,
        String subject,
        boolean sealed) {}
