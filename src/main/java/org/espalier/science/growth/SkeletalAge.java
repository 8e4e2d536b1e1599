package org.espalier.science.growth;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.espalier.science.quantity.Age;

/**
 * How far the skeleton had matured on a day.
 *
 * @param on the day of the picture that was read
 * @param age by the method of whoever read it
 */
public record SkeletalAge(LocalDate on, Age age) {

    /** The age on another day, a year a year. Error: during the spurt it may run faster; read it anew within a year. */
    public Age onDay(LocalDate day) {
        double years = age.decimalYears() + GrowthAge.yearsBetween(on, day);
        return Age.ofDecimalYears(Math.max(0, years));
    }

    boolean isWithinMonths(int months, LocalDate day) {
        return ChronoUnit.DAYS.between(on.plusMonths(months), day) <= 0;
    }
}
