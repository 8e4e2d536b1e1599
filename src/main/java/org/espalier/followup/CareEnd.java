package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;

/**
 * That a child left care.
 *
 * @param reason empty when the child is mature
 */
public record CareEnd(Optional<EndReason> reason, LocalDate on, String note) {

    /** Whether the family may still be written to. */
    public boolean stopsLetters() {
        return reason.filter(EndReason.DIED::equals).isPresent();
    }
}
