package org.espalier.science.forecast;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/**
 * How far a typical plate brings a typical growth plate, by sex and age, to the end of growth.
 *
 * <p>The table {@code rates-by-age.csv} is read as straight lines between its rows.
 */
final class GrowthPace {

    private static final double LAST_YEAR = 19;
    private static final Map<PhysisSite, Map<Sex, GrowthPace>> ALL = read();

    private final double[] years;
    private final double[] rates;

    private GrowthPace(List<PrintedTable.Row> rows, PhysisSite site) {
        String column = site == PhysisSite.DISTAL_FEMUR ? "distal_femur" : "proximal_tibia";
        years = rows.stream().mapToDouble(row -> row.number("years")).toArray();
        rates = rows.stream().mapToDouble(row -> row.number(column)).toArray();
    }

    static GrowthPace of(PhysisSite site, Sex sex) {
        return requireNonNull(requireNonNull(ALL.get(site)).get(sex));
    }

    /** Degrees a month at an age in years. */
    double at(double age) {
        if (age <= years[0]) {
            return rates[0];
        }
        int i = 1;
        while (i < years.length && years[i] < age) {
            i++;
        }
        if (i == years.length) {
            return rates[i - 1];
        }
        double part = (age - years[i - 1]) / (years[i] - years[i - 1]);
        return rates[i - 1] + part * (rates[i] - rates[i - 1]);
    }

    /** Whole months from an age until no growth is left. */
    static int monthsToEnd(double age) {
        return Math.max(1, (int) Math.ceil(12 * (LAST_YEAR - age)));
    }

    private static Map<PhysisSite, Map<Sex, GrowthPace>> read() {
        List<PrintedTable.Row> rows =
                PrintedTable.of(GrowthPace.class, "rates-by-age.csv").rows();
        var all = new EnumMap<PhysisSite, Map<Sex, GrowthPace>>(PhysisSite.class);
        for (PhysisSite site : PhysisSite.values()) {
            var bySex = new EnumMap<Sex, GrowthPace>(Sex.class);
            for (Sex sex : Sex.values()) {
                bySex.put(
                        sex,
                        new GrowthPace(
                                rows.stream()
                                        .filter(row -> row.text("sex").equals(sex.name()))
                                        .toList(),
                                site));
            }
            all.put(site, bySex);
        }
        return all;
    }
}
