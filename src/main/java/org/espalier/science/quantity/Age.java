package org.espalier.science.quantity;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * Age counted by the calendar: completed months, and the days since the last was completed.
 *
 * <p>A month is completed on the day of birth's number; where a month is too short for it, on the first of the next
 * month. A decimal age adds the days at 30.4375 to a month.
 *
 * @param completedMonths completed months, 0 to 1,800
 * @param daysBeyond days since the last month was completed, 0 to 30
 */
public record Age(int completedMonths, int daysBeyond) implements Comparable<Age> {

    private static final double DAYS_IN_A_MONTH = 30.4375;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if months or days are out of range
     */
    public Age {
        if (completedMonths < 0 || completedMonths > 1800 || daysBeyond < 0 || daysBeyond > 30) {
            throw new IllegalArgumentException(
                    "An age cannot be " + completedMonths + " months and " + daysBeyond + " days");
        }
    }

    /**
     * The age on a day.
     *
     * @param birth day of birth
     * @param day the day asked for, not before birth
     * @throws IllegalArgumentException if the day lies before birth
     */
    public static Age between(LocalDate birth, LocalDate day) {
        if (day.isBefore(birth)) {
            throw new IllegalArgumentException("On " + day + " a child born on " + birth + " was not yet born");
        }
        long months = ChronoUnit.MONTHS.between(birth, day);
        long days = ChronoUnit.DAYS.between(birth.plusMonths(months), day);
        return new Age(Math.toIntExact(months), Math.toIntExact(days));
    }

    /**
     * An age of completed months and no days.
     *
     * @param months completed months, 0 to 1,800
     */
    public static Age ofMonths(int months) {
        return new Age(months, 0);
    }

    /**
     * An age of completed years and no months.
     *
     * @param years completed years, 0 to 150
     */
    public static Age ofYears(int years) {
        return new Age(Math.multiplyExact(years, 12), 0);
    }

    /**
     * The age nearest to a decimal one, to the day.
     *
     * @param years years with decimals, 0 to 150
     */
    public static Age ofDecimalYears(double years) {
        double months = years * 12;
        int completed = (int) months;
        return new Age(completed, (int) Math.round((months - completed) * DAYS_IN_A_MONTH));
    }

    /** Completed years. */
    public int years() {
        return completedMonths / 12;
    }

    /** Completed months since the last birthday, 0 to 11. */
    public int months() {
        return completedMonths % 12;
    }

    /** The age in months with decimals. */
    public double decimalMonths() {
        return completedMonths + daysBeyond / DAYS_IN_A_MONTH;
    }

    /** The age in years with decimals. */
    public double decimalYears() {
        return decimalMonths() / 12;
    }

    @Override
    public int compareTo(Age other) {
        return Double.compare(decimalMonths(), other.decimalMonths());
    }
}
