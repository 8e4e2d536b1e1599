package org.espalier.followup;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.espalier.prognosis.Past;
import org.espalier.science.forecast.LookRule;

/** Where the angle of a growth plate is going, as far as anybody can say. */
public interface Outlook {

    /** The chance, 0 to 1, that the angle is more than so many degrees past its target on the day. */
    double chancePast(LocalDate day, double degrees);

    /** How far past its target the angle is on the day. */
    Past past(LocalDate day);

    /** How much the angle is expected to change between two days, in degrees, never negative. */
    double change(LocalDate from, LocalDate to);

    /** The day by which the target is as likely reached as not; empty when it more likely never is. */
    Optional<LocalDate> arrival();

    /**
     * The last day of a look on which the chance of going past the target, the wait for theatre on top, is still borne;
     * empty when it lies past the longest interval.
     */
    default Optional<LocalDate> lastBearable(CareFacts care, Limits limits) {
        var from = care.lastLook();
        long longest = ChronoUnit.DAYS.between(from, from.plusMonths(limits.tetheredMonths()));
        double latest = new LookRule(limits.pastTargetChance(), longest)
                .latest(days -> chancePast(care.afterWait(from.plusDays((long) days)), limits.pastTargetDegrees()), 0);
        return latest < longest ? Optional.of(from.plusDays((long) latest)) : Optional.empty();
    }
}
