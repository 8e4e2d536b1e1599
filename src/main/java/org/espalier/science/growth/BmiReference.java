package org.espalier.science.growth;

import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;
import org.espalier.science.statistics.LmsDistribution;

/**
 * Body mass index for age, from 2 to 20 years.
 *
 * <p>The parameters of a month of age hold at its middle; between them each is interpolated linearly by the age in
 * months with decimals.
 *
 * <p>Source: 2000 CDC Growth Charts for the United States, Vital Health Stat 2002;11(246). It describes children of the
 * United States, 1963 to 1994; it is no standard of health. Error: parameters rounded to 5 and 6 decimals move a
 * z-score by less than 0.0001.
 */
public final class BmiReference {

    /** The name of the reference, to stand beside every centile. */
    public static final String SOURCE = "2000 CDC Growth Charts for the United States";

    /** The youngest age it holds for. */
    public static final Age FROM = Age.ofYears(2);

    /** The age up to which it holds, the day itself included. */
    public static final Age TO = Age.ofYears(20);

    private static final NavigableMap<Double, LmsDistribution> GIRLS = read(Sex.FEMALE);
    private static final NavigableMap<Double, LmsDistribution> BOYS = read(Sex.MALE);

    private BmiReference() {}

    /**
     * Where a child stands.
     *
     * @param sex whose table is asked
     * @param age on the day of weighing
     * @param index the body mass index of that day
     * @return empty outside 2 to 20 years
     */
    public static Optional<Standing> standing(Sex sex, Age age, BodyMassIndex index) {
        return distribution(sex, age)
                .map(distribution -> new Standing(distribution.zScore(index.kilogramsPerSquareMetre())));
    }

    /**
     * The distribution at an age.
     *
     * @return in kg/m²; empty outside 2 to 20 years
     */
    public static Optional<LmsDistribution> distribution(Sex sex, Age age) {
        return age.compareTo(FROM) < 0 || age.compareTo(TO) > 0
                ? Optional.empty()
                : Optional.of(distribution(sex, age.decimalMonths()));
    }

    /** The distribution at an age in months, 24 to 240.5. */
    static LmsDistribution distribution(Sex sex, double months) {
        NavigableMap<Double, LmsDistribution> table = sex == Sex.FEMALE ? GIRLS : BOYS;
        var younger = table.floorEntry(months);
        var older = table.ceilingEntry(months);
        double span = older.getKey() - younger.getKey();
        double part = span == 0 ? 0 : (months - younger.getKey()) / span;
        return younger.getValue().towards(older.getValue(), part);
    }

    private static NavigableMap<Double, LmsDistribution> read(Sex sex) {
        NavigableMap<Double, LmsDistribution> byMonths = new TreeMap<>();
        PrintedTable.of(BmiReference.class, "bmi-for-age-2000.csv").rows().stream()
                .filter(row -> row.text("sex").equals(sex.name()))
                .forEach(row -> byMonths.put(
                        row.number("months"), new LmsDistribution(row.number("l"), row.number("m"), row.number("s"))));
        return byMonths;
    }
}
