package org.espalier.opinion;

import java.time.Instant;
import java.util.Optional;
import org.espalier.access.StaffId;

/**
 * Somebody with a grant.
 *
 * @param mayAnswer whether they may write, or only look
 * @param endsAt when the grant ends, or ended
 * @param ended why it ended before its time
 */
public record Member(
        StaffId staff, String name, boolean mayAnswer, Instant opensAt, Instant endsAt, Optional<Ended> ended) {

    /** Why a grant ended before its time. */
    public enum Ended {
        WITHDRAWN,
        CLOSED,
        HANDED_ON
    }
}
