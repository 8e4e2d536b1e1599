package org.espalier.access;

import java.time.Instant;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A surgeon's look at a child of another hospital in an emergency.
 *
 * @param site the hospital that had care of the child then
 * @param who the surgeon's name, and in brackets the hospital they come from
 * @param until when it ends by itself
 * @param review what the privacy officer found; null before the review, and for whoever may not read it
 */
public record EmergencyAccess(
        UUID id,
        SiteId site,
        UUID child,
        StaffId staff,
        String who,
        String reason,
        Instant taken,
        Instant until,
        @Nullable Review review) {

    /** What the privacy officer found; access that was not justified ended with it. */
    public record Review(boolean justified, String note, String by, Instant at) {}
}
