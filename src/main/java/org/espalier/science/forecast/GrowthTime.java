package org.espalier.science.forecast;

/**
 * The clock of a tethered growth plate: degrees that a typical plate would have corrected since it was placed, from
 * growth by sex and age and from the slowing with time in place. It stands still when growth has ended.
 */
final class GrowthTime implements TetherTime {

    private final double[] degrees;

    private GrowthTime(double[] degrees) {
        this.degrees = degrees;
    }

    /**
     * The clock of a growth plate.
     *
     * @param pace how fast typical plates are
     * @param years skeletal age when the plate was placed
     * @param slowing part of the rate lost a month
     */
    static GrowthTime of(GrowthPace pace, double years, double slowing) {
        int months = GrowthPace.monthsToEnd(years);
        var degrees = new double[months + 1];
        double kept = Math.exp(-slowing / 2);
        double keptMonthly = Math.exp(-slowing);
        for (int month = 0; month < months; month++) {
            degrees[month + 1] = degrees[month] + kept * pace.at(years + (month + 0.5) / 12);
            kept *= keptMonthly;
        }
        return new GrowthTime(degrees);
    }

    @Override
    public double at(double months) {
        if (months <= 0) {
            return 0;
        }
        int whole = (int) months;
        return whole >= degrees.length - 1
                ? degrees[degrees.length - 1]
                : degrees[whole] + (months - whole) * (degrees[whole + 1] - degrees[whole]);
    }

    @Override
    public int months() {
        return degrees.length - 1;
    }
}
