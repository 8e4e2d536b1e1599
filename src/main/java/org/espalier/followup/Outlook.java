package org.espalier.followup;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.prognosis.Past;

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
     * empty when it lies past the longest interval. The chance only grows with time, so halving finds it.
     */
    default Optional<LocalDate> lastBearable(CareFacts care, Limits limits) {
        var from = care.lastLook();
        long bearable = 0;
        long longest = from.plusMonths(limits.tetheredMonths()).toEpochDay() - from.toEpochDay();
        long unbearable = longest;
        while (unbearable - bearable > 1) {
            long middle = (bearable + unbearable) / 2;
            double chance = chancePast(care.afterWait(from.plusDays(middle)), limits.pastTargetDegrees());
            boolean borne = chance <= limits.pastTargetChance();
            bearable = borne ? middle : bearable;
            unbearable = borne ? unbearable : middle;
        }
        return unbearable == longest ? Optional.empty() : Optional.of(from.plusDays(bearable));
    }
}
