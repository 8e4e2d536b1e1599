package org.espalier.followup;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Limits as somebody signed them for a site.
 *
 * @param signedBy null where the reader may not see who it was
 */
public record SignedLimits(
        Limits limits, String reason, @Nullable String signedBy, LocalDate signedOn) {}
