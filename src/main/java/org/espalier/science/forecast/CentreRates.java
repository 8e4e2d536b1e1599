package org.espalier.science.forecast;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.science.quantity.PrintedTable;

/**
 * The rates of one centre: published ones, or those learnt from its own limbs by {@link CentreLearning}.
 *
 * <p>Each rate has a value and how uncertain it still is, as the standard deviation of its logarithm or logit.
 */
public final class CentreRates {

    /** Changes whenever the same inputs would give another forecast; kept with each forecast. */
    public static final int VERSION = 3;

    private static final List<PrintedTable.Row> TABLE = table();
    private static final CentreRates PUBLISHED = new CentreRates(
            0,
            TABLE.stream().mapToDouble(row -> row.number("value")).toArray(),
            TABLE.stream().mapToDouble(row -> row.number("spread")).toArray());

    private final int limbs;
    private final double[] values;
    private final double[] spreads;

    private CentreRates(int limbs, double[] values, double[] spreads) {
        this.limbs = limbs;
        this.values = values;
        this.spreads = spreads;
    }

    /** What published series say, before any limb of the centre. */
    public static CentreRates published() {
        return PUBLISHED;
    }

    /**
     * Rates as they were kept.
     *
     * @param limbs how many limbs they were learnt from
     * @param values in the order of {@link Rate}
     * @param spreads in the order of {@link Rate}
     * @throws IllegalArgumentException if there are not as many values and spreads as rates, or one is not finite
     */
    public static CentreRates of(int limbs, double[] values, double[] spreads) {
        int rates = Rate.values().length;
        if (values.length != rates || spreads.length != rates) {
            throw new IllegalArgumentException("There are " + rates + " rates, not " + values.length);
        }
        if (!Stream.of(values, spreads).flatMapToDouble(Arrays::stream).allMatch(Double::isFinite)) {
            throw new IllegalArgumentException("A rate is not finite: " + Arrays.toString(values));
        }
        return new CentreRates(limbs, values.clone(), spreads.clone());
    }

    /** How many limbs of the centre they were learnt from; 0 for published ones. */
    public int limbs() {
        return limbs;
    }

    /** The value, in the unit of {@link Rate}. */
    public double value(Rate rate) {
        return values[rate.ordinal()];
    }

    /** Standard deviation of the logarithm or logit of the value. */
    public double spread(Rate rate) {
        return spreads[rate.ordinal()];
    }

    /** Where the published value is from. */
    public static String source(Rate rate) {
        return TABLE.get(rate.ordinal()).text("source");
    }

    /** These rates with one of them set. */
    public CentreRates with(Rate rate, double value) {
        return with(rate, value, spreads[rate.ordinal()]);
    }

    CentreRates with(Rate rate, double value, double spread) {
        double[] changed = values.clone();
        double[] spread2 = spreads.clone();
        changed[rate.ordinal()] = value;
        spread2[rate.ordinal()] = spread;
        return new CentreRates(limbs, changed, spread2);
    }

    CentreRates learntFrom(int number) {
        return new CentreRates(number, values, spreads);
    }

    /** The value moved by so much of its logarithm or logit. */
    CentreRates moved(Rate rate, double by) {
        double at = value(rate);
        return with(rate, isShare(rate) ? 1 / (1 + (1 / at - 1) * Math.exp(-by)) : at * Math.exp(by));
    }

    /** How far the value lies from another's, in the logarithm or logit. */
    double away(Rate rate, CentreRates other) {
        return transformed(rate) - other.transformed(rate);
    }

    private double transformed(Rate rate) {
        double at = value(rate);
        return isShare(rate) ? Math.log(at / (1 - at)) : Math.log(at);
    }

    private static boolean isShare(Rate rate) {
        return TABLE.get(rate.ordinal()).text("scale").equals("logit");
    }

    double noResponse(Cause cause) {
        return value(Rate.noResponse(cause));
    }

    double failuresAMonth(Cause cause) {
        return value(Rate.failure(cause));
    }

    /** The logarithm of the typical efficiency of a plate: rate as a part of the mean by age. */
    double logEfficiency(PhysisSite site, Cause cause) {
        return factors(site, cause).mapToDouble(rate -> Math.log(value(rate))).sum();
    }

    /**
     * Standard deviation of the logarithm of a limb's efficiency: between limbs, and what is not known of the centre.
     */
    double logEfficiencySpread(PhysisSite site, Cause cause) {
        double between = value(Rate.BETWEEN_LIMBS) * (cause == Cause.IDIOPATHIC_VALGUS ? 1 : value(Rate.wider(cause)));
        return Math.sqrt(between * between
                + factors(site, cause)
                        .mapToDouble(rate -> spread(rate) * spread(rate))
                        .sum());
    }

    /** Standard deviation of a film, in degrees: outlines of the tibia and of diseased bone ends are harder to read. */
    public double filmError(PhysisSite site, Cause cause) {
        double bone = site == PhysisSite.DISTAL_FEMUR ? 1 : value(Rate.FILM_ERROR_TIBIA);
        double disease =
                switch (cause) {
                    case IDIOPATHIC_VALGUS, IDIOPATHIC_VARUS -> 1;
                    case INFANTILE_TIBIA_VARA -> value(Rate.FILM_ERROR_INFANTILE_TIBIA_VARA);
                    case LATE_ONSET_TIBIA_VARA -> value(Rate.FILM_ERROR_LATE_ONSET_TIBIA_VARA);
                    case SKELETAL_DYSPLASIA -> value(Rate.FILM_ERROR_SKELETAL_DYSPLASIA);
                    case RICKETS -> value(Rate.FILM_ERROR_RICKETS);
                };
        return value(Rate.FILM_ERROR) * bone * disease;
    }

    private static Stream<Rate> factors(PhysisSite site, Cause cause) {
        boolean femur = site == PhysisSite.DISTAL_FEMUR;
        Rate level = femur ? Rate.FEMUR : Rate.TIBIA;
        return switch (cause) {
            case IDIOPATHIC_VALGUS -> Stream.of(level);
            case IDIOPATHIC_VARUS -> Stream.of(level, Rate.FACTOR_IDIOPATHIC_VARUS);
            case INFANTILE_TIBIA_VARA -> Stream.of(level, Rate.FACTOR_INFANTILE_TIBIA_VARA);
            case LATE_ONSET_TIBIA_VARA -> Stream.of(level, Rate.FACTOR_LATE_ONSET_TIBIA_VARA);
            case SKELETAL_DYSPLASIA -> Stream.of(level, Rate.FACTOR_SKELETAL_DYSPLASIA);
            case RICKETS ->
                femur
                        ? Stream.of(level, Rate.FACTOR_RICKETS)
                        : Stream.of(level, Rate.FACTOR_RICKETS, Rate.FACTOR_RICKETS_TIBIA);
        };
    }

    private static List<PrintedTable.Row> table() {
        var rows = PrintedTable.of(CentreRates.class, "published-rates.csv").rows();
        if (!rows.stream().map(row -> Rate.valueOf(row.text("rate"))).toList().equals(List.of(Rate.values()))) {
            throw new IllegalStateException("The rows of published-rates.csv do not follow the order of the rates");
        }
        return rows;
    }
}
