package org.espalier.science.growth;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.espalier.science.quantity.PrintedTable;
import org.espalier.science.quantity.Sex;

/** One column of a printed table by age for one sex; between rows straight lines. */
final class AgeTable {

    private final double[] years;
    private final double[] values;

    private AgeTable(double[] years, double[] values) {
        this.years = years;
        this.values = values;
    }

    static AgeTable of(String name, Sex sex, ToDoubleFunction<PrintedTable.Row> value) {
        List<PrintedTable.Row> rows = PrintedTable.of(AgeTable.class, name).rows().stream()
                .filter(row -> row.text("sex").equals(sex.name()))
                .toList();
        return new AgeTable(
                rows.stream().mapToDouble(row -> row.number("years")).toArray(),
                rows.stream().mapToDouble(value).toArray());
    }

    double from() {
        return years[0];
    }

    double to() {
        return years[years.length - 1];
    }

    double first() {
        return values[0];
    }

    double last() {
        return values[values.length - 1];
    }

    /** The value at an age in years; before the first and after the last row that row's value. */
    double at(double age) {
        if (age <= from()) {
            return first();
        }
        for (int i = 1; i < years.length; i++) {
            if (age <= years[i]) {
                double part = (age - years[i - 1]) / (years[i] - years[i - 1]);
                return values[i - 1] + part * (values[i] - values[i - 1]);
            }
        }
        return last();
    }
}
