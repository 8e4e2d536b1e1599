package org.espalier.science.growth;

import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;
import org.espalier.science.statistics.NormalDistribution;

/**
 * Length of femur and tibia by age and sex, from 1 to 18 years; between whole years mean and spread are interpolated
 * linearly.
 *
 * <p>Source: Anderson, Messner and Green, J Bone Joint Surg Am 1964;46-A:1197, all values from memory and unverified.
 * Lengths there include the epiphyses and are of orthoradiographs: lengths between joint centres on a standing film
 * differ by some percent, so that it serves to catch what cannot be, not to judge a child.
 */
public final class LengthForAge {

    /** Years from which lengths no longer change. */
    static final int GROWN = 18;

    /** The file of the printed table. */
    static final String TABLE = "lengths-for-age-1964.csv";

    private static final List<PrintedTable.Row> ROWS =
            PrintedTable.of(LengthForAge.class, TABLE).rows();

    /** The bone asked for. */
    public enum Bone {
        /** Femur. */
        FEMUR("femur"),
        /** Tibia. */
        TIBIA("tibia");

        private final String column;

        Bone(String column) {
            this.column = column;
        }

        /** The column of its mean. */
        String column() {
            return column + "_mean";
        }
    }

    private LengthForAge() {}

    /**
     * How lengths are spread at an age.
     *
     * @return in millimetres; empty outside 1 to 18 years
     */
    public static Optional<NormalDistribution> of(Bone bone, Sex sex, Age age) {
        double years = age.decimalYears();
        Optional<NormalDistribution> younger = atYear(bone, sex, (int) Math.floor(years));
        Optional<NormalDistribution> older = atYear(bone, sex, (int) Math.ceil(years));
        double part = years - Math.floor(years);
        return younger.flatMap(from -> older.map(to -> new NormalDistribution(
                from.mean() + part * (to.mean() - from.mean()),
                from.standardDeviation() + part * (to.standardDeviation() - from.standardDeviation()))));
    }

    /**
     * How many standard deviations a length lies from the mean.
     *
     * @return empty outside 1 to 18 years
     */
    public static Optional<Double> z(Bone bone, Sex sex, Age age, Length length) {
        return of(bone, sex, age).map(spread -> (length.millimetres() - spread.mean()) / spread.standardDeviation());
    }

    private static Optional<NormalDistribution> atYear(Bone bone, Sex sex, int year) {
        return ROWS.stream()
                .filter(row -> row.text("sex").equals(sex.name()) && row.number("years") == year)
                .findFirst()
                .map(row ->
                        new NormalDistribution(10 * row.number(bone.column()), 10 * row.number(bone.column + "_sd")));
    }
}
