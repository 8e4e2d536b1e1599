package org.espalier.access;

import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The key of a site's archive, without its secret.
 *
 * @param label what the operator calls the archive
 * @param scopes what it is for
 * @param revoked when it ceased to open; null while it does
 */
public record SiteToken(
        UUID id,
        SiteId site,
        String label,
        Set<TokenScope> scopes,
        Instant issued,
        @Nullable Instant revoked) {}
