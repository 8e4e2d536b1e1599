package org.espalier.access;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * A role at a site for a time.
 *
 * @param until last day; null while no end is set
 */
public record Membership(
        SiteId site, Role role, LocalDate from, @Nullable LocalDate until) {

    public Membership {
        if (until != null && until.isBefore(from)) {
            throw new IllegalArgumentException("ends on " + until + ", before it begins on " + from);
        }
    }
}
