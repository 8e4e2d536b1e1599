package org.espalier.followup;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What the rules need to know of one child on the day they are asked.
 *
 * @param since in care since that day
 * @param lastSeen when the child last came
 * @param boneDisease rickets, dysplasia, renal: bones that turn quickly
 * @param tibiaVara tibia vara of early onset
 * @param asked what somebody asked for beside the rules
 * @param waitMonths from look to theatre at the site: the 90th percentile of its records, or the site's limit
 */
public record CareFacts(
        LocalDate today,
        LocalDate birth,
        LocalDate since,
        Optional<LocalDate> lastSeen,
        boolean boneDisease,
        boolean tibiaVara,
        List<PlateFacts> plates,
        Optional<LocalDate> asked,
        double waitMonths) {

    private static final double DAYS_OF_A_MONTH = 30.4375;

    public CareFacts {
        plates = List.copyOf(plates);
    }

    /** The day from which an interval is counted: when the child last came, else when care began. */
    LocalDate lastLook() {
        return lastSeen.orElse(since);
    }

    /** Where the wait for theatre leads that begins on the day. */
    LocalDate afterWait(LocalDate day) {
        return day.plusDays(Math.round(waitMonths * DAYS_OF_A_MONTH));
    }

    /** The day on which the wait for theatre must begin to end on the given one. */
    LocalDate beforeWait(LocalDate day) {
        return day.minusDays(Math.round(waitMonths * DAYS_OF_A_MONTH));
    }
}
