package org.espalier.demo.drawn;

import java.util.ArrayList;
import java.util.List;
import org.espalier.science.quantity.Age;

/**
 * How large the parts of a child's legs are drawn at an age.
 *
 * <p>All lengths in mm in the plane of the bones. Bone lengths follow a printed table, everything else is judged by
 * eye: the numbers serve drawing alone and are never shown as norms.
 */
public record BodyProportions(
        Build build,
        double ageYears,
        double femurMm,
        double tibiaMm,
        double kneeWidthMm,
        double headRadiusMm,
        double hipHalfMm,
        double jointGapMm,
        double epiphysisShare,
        double physisMm) {

    /** Whose table is read. */
    public enum Build {
        BOY,
        GIRL
    }

    private static final List<double[]> LENGTHS = ResourceTable.read("lengths-by-age.csv");
    private static final List<double[]> PARTS = ResourceTable.read("proportions-by-age.csv");

    /**
     * Reads the tables at an age, between rows by straight line.
     *
     * @param age 1 to 18 years
     * @throws IllegalArgumentException for an age outside the tables
     */
    public static BodyProportions at(Build build, Age age) {
        return at(build, age.decimalYears());
    }

    static BodyProportions at(Build build, double ageYears) {
        if (!(ageYears >= 1 && ageYears <= 18)) {
            throw new IllegalArgumentException("age to draw must be 1 to 18 years: " + ageYears);
        }
        boolean boy = build == Build.BOY;
        double[] lengths = ResourceTable.at(LENGTHS, ageYears);
        double[] parts = ResourceTable.at(PARTS, ageYears);
        double head = parts[3];
        return new BodyProportions(
                build,
                ageYears,
                lengths[boy ? 1 : 3] - Math.max(head, 0.3 * parts[1]),
                lengths[boy ? 2 : 4],
                parts[boy ? 1 : 2],
                head,
                parts[4],
                parts[5],
                parts[6],
                parts[boy ? 7 : 8]);
    }

    boolean isTrochanterOssified() {
        return ageYears >= 5;
    }

    boolean isPatellaOssified() {
        return ageYears >= 4;
    }

    /** Columns of numbers under a header, comments with #. */
    private static final class ResourceTable {

        static List<double[]> read(String name) {
            List<double[]> rows = new ArrayList<>();
            for (String line : Resource.text(name).lines().toList()) {
                if (!line.startsWith("#") && !line.startsWith("age")) {
                    rows.add(numbers(line));
                }
            }
            return List.copyOf(rows);
        }

        private static double[] numbers(String line) {
            String[] cells = line.split(",", -1);
            double[] row = new double[cells.length];
            for (int i = 0; i < cells.length; i++) {
                row[i] = Double.parseDouble(cells[i]);
            }
            return row;
        }

        static double[] at(List<double[]> rows, double age) {
            int upper = 1;
            while (upper < rows.size() - 1 && rows.get(upper)[0] < age) {
                upper++;
            }
            double[] below = rows.get(upper - 1);
            double[] above = rows.get(upper);
            double share = Math.clamp((age - below[0]) / (above[0] - below[0]), 0, 1);
            double[] row = new double[below.length];
            for (int i = 0; i < row.length; i++) {
                row[i] = below[i] + share * (above[i] - below[i]);
            }
            return row;
        }
    }
}
