package org.espalier.science.growth;

import java.util.OptionalDouble;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * How many times its present length a leg, femur or tibia will measure at maturity.
 *
 * <p>Source: Paley, Bhave, Herzenberg and Bowen, J Bone Joint Surg Am 2000;82-A:1432, all values from memory. Error:
 * weak in infancy (anchors at birth come out 6 to 7 % short); four height tables of the same kind overestimated 31
 * children treated by guided growth (Bone Jt Open 2023, BJO-2023-0105).
 */
public final class LegMultiplier {

    private static final BySex<AgeTable> TABLES =
            BySex.of(sex -> AgeTable.of("multipliers-2000.csv", sex, row -> row.number("multiplier")));

    private LegMultiplier() {}

    /**
     * The multiplier at an age; from the end of the table on it is 1.
     *
     * @param age since birth or by bone age, as the table is asked
     * @return at least 1; always present as the table begins at birth
     */
    public static double at(Sex sex, Age age) {
        return at(sex, age.decimalYears());
    }

    static double at(Sex sex, double years) {
        return TABLES.get(sex).at(years);
    }

    /**
     * The age at which a multiplier is first reached.
     *
     * @param multiplier a ratio
     * @return in years; empty below 1 or above that of birth
     */
    public static OptionalDouble yearsAt(Sex sex, double multiplier) {
        AgeTable table = TABLES.get(sex);
        return Falling.firstAtOrBelow(table::at, table.from(), table.to(), multiplier);
    }

    /**
     * A length at maturity, present length times multiplier.
     *
     * @param length now, of leg, femur or tibia
     * @param age now
     */
    public static Length atMaturity(Sex sex, Age age, Length length) {
        return new Length(length.millimetres() * at(sex, age));
    }
}
