package org.espalier.science.forecast;

import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/**
 * What becomes of a straightened bone once nothing holds it: it stays, or part of the deformity returns. Published
 * chances, not learnt; small series.
 *
 * <p>What returns does so evenly within two years, less if growth ends before. Source and state of checking:
 * {@code rebound.csv} beside this class.
 *
 * @param chance of a return, 0 to 1
 * @param now degrees left to the target on the day of release
 * @param error standard deviation of that, in degrees
 * @param growthLeft months of growth left on that day
 */
public record AfterRelease(double chance, double now, double error, double growthLeft) {

    private static final double SIZE = 4;
    private static final double SIZE_SPREAD = 2.5;
    private static final double WITHIN_MONTHS = 24;
    private static final double QUICK_A_YEAR = 6.9;
    private static final double QUICK = 0.15;
    private static final double DYSPLASIA = 0.20;
    private static final double MOST = 0.9;

    /** Degrees by which a bone that stays still wanders until then. */
    private static final double UNREST = 0.5;

    private static final PrintedTable TABLE = PrintedTable.of(AfterRelease.class, "rebound.csv");

    /**
     * The course after release.
     *
     * @param sex the child's
     * @param years age on the day of release
     * @param cause why the limb was bent
     * @param degreesAYear how quickly the plate corrected
     * @param now degrees left to the target on that day, − beyond it
     * @param error standard deviation of that
     */
    public static AfterRelease of(Sex sex, double years, Cause cause, double degreesAYear, double now, double error) {
        double chance = TABLE.rows().stream()
                .filter(row -> years < row.number(sex == Sex.FEMALE ? "before_girls" : "before_boys"))
                .findFirst()
                .map(row -> row.number("chance"))
                .orElse(0.0);
        chance += degreesAYear > QUICK_A_YEAR ? QUICK : 0;
        chance += cause == Cause.SKELETAL_DYSPLASIA ? DYSPLASIA : 0;
        return new AfterRelease(Math.min(MOST, chance), now, error, GrowthPace.monthsToEnd(years));
    }

    /**
     * How degrees left are spread so many months after release.
     *
     * @param months after release, 0 or more
     */
    public Spread degreesLeft(double months) {
        double part = Math.min(1, Math.min(months, growthLeft) / WITHIN_MONTHS);
        return new Spread(2, new double[] {1 - chance, chance}, new double[] {now, now + SIZE * part}, new double[] {
            Math.hypot(error, UNREST * part), Math.hypot(error, SIZE_SPREAD * part)
        });
    }
}
