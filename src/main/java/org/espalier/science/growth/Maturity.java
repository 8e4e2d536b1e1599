package org.espalier.science.growth;

import java.time.LocalDate;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/**
 * When growth at the knee has all but ended, with the spread of children about it.
 *
 * <p>Source: middle, the ages at which the yearly rule stops, 14 and 16 years (Menelaus, J Bone Joint Surg Br
 * 1966;48:336); spread judged: a year by age since birth, 0.6 years by bone age. It is no proof of closed plates: only
 * a film is.
 *
 * @param day the middle
 * @param years the age at it, by the count reckoned with
 * @param sdYears standard deviation in years, above 0
 */
public record Maturity(LocalDate day, double years, double sdYears) {

    private static final double NINETY_PERCENT = 1.645;
    private static final double DAYS_IN_A_YEAR = 365.25;
    private static final BySex<Row> ROWS = BySex.of(Maturity::row);

    private record Row(double years, double byBirth, double byBoneAge) {}

    /** The end of growth of a child. */
    public static Maturity of(GrowthAge age) {
        Row row = ROWS.get(age.sex());
        double spread = age.basis() == GrowthAge.Basis.BONE_AGE ? row.byBoneAge : row.byBirth;
        return new Maturity(age.dayAt(row.years), row.years, spread);
    }

    /** One child in twenty has ended earlier. */
    public LocalDate earliest() {
        return day.minusDays(Math.round(NINETY_PERCENT * sdYears * DAYS_IN_A_YEAR));
    }

    /** One child in twenty ends later. */
    public LocalDate latest() {
        return day.plusDays(Math.round(NINETY_PERCENT * sdYears * DAYS_IN_A_YEAR));
    }

    private static Row row(Sex sex) {
        return PrintedTable.of(Maturity.class, "end-of-growth.csv").rows().stream()
                .filter(row -> row.text("sex").equals(sex.name()))
                .map(row -> new Row(row.number("years"), row.number("sd_by_birth"), row.number("sd_by_bone_age")))
                .findFirst()
                .orElseThrow();
    }
}
