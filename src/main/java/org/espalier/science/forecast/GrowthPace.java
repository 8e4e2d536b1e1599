package org.espalier.science.forecast;

import static java.util.Objects.requireNonNull;

import java.util.EnumMap;
import java.util.Map;
import org.espalier.science.growth.FullTether;
import org.espalier.science.growth.GrowthPlate;
import org.espalier.science.quantity.Sex;

/**
 * How fast a growth plate would turn by sex and age if one side were held entirely ({@link FullTether}), to the end of
 * growth.
 */
final class GrowthPace {

    private static final int LAST_YEAR = 19;
    private static final int MONTHS = 12;
    private static final Map<PhysisSite, Map<Sex, GrowthPace>> ALL = all();

    /** Degrees a month at each month of age. */
    private final double[] rates = new double[LAST_YEAR * MONTHS + 1];

    private GrowthPace(FullTether tether) {
        for (int month = 0; month < rates.length - 1; month++) {
            rates[month] = tether.degreesAMonth((double) month / MONTHS);
        }
    }

    static GrowthPace of(PhysisSite site, Sex sex) {
        return requireNonNull(requireNonNull(ALL.get(site)).get(sex));
    }

    /** Degrees a month at an age in years. */
    double at(double age) {
        double months = Math.clamp(age * MONTHS, 0, rates.length - 1.0);
        int whole = Math.min((int) months, rates.length - 2);
        return rates[whole] + (months - whole) * (rates[whole + 1] - rates[whole]);
    }

    /** Whole months from an age until no growth is left. */
    static int monthsToEnd(double age) {
        return Math.max(1, (int) Math.ceil(MONTHS * (LAST_YEAR - age)));
    }

    private static Map<PhysisSite, Map<Sex, GrowthPace>> all() {
        var all = new EnumMap<PhysisSite, Map<Sex, GrowthPace>>(PhysisSite.class);
        for (PhysisSite site : PhysisSite.values()) {
            GrowthPlate plate = site == PhysisSite.DISTAL_FEMUR ? GrowthPlate.DISTAL_FEMUR : GrowthPlate.PROXIMAL_TIBIA;
            var bySex = new EnumMap<Sex, GrowthPace>(Sex.class);
            for (Sex sex : Sex.values()) {
                bySex.put(sex, new GrowthPace(FullTether.of(plate, sex)));
            }
            all.put(site, bySex);
        }
        return all;
    }
}
