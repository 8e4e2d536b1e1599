package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** The cells of one row as what they mean; what cannot be read is added to the problems. */
final class Cells {

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private final String file;
    private final CsvTable.Row row;
    private final List<FileProblem> problems;

    Cells(String file, CsvTable.Row row, List<FileProblem> problems) {
        this.file = file;
        this.row = row;
        this.problems = problems;
    }

    Optional<String> name(String column) {
        String text = row.cell(column);
        if (text.isEmpty()) {
            refuse(column, "this cell is empty. Each row needs it.");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    String text(String column) {
        return row.cell(column);
    }

    boolean isEmpty(String column) {
        return row.cell(column).isEmpty();
    }

    Optional<LocalDate> date(String column) {
        try {
            return Optional.of(LocalDate.parse(row.cell(column)));
        } catch (DateTimeException _) {
            refuse(column, quoted(column) + " is not a date. Write it as in 2019-07-14.");
            return Optional.empty();
        }
    }

    Optional<Double> number(String column, double low, double high) {
        String text = row.cell(column);
        if (!NUMBER.matcher(text).matches()) {
            refuse(column, quoted(column) + " is not a number. Write it as in 1234.5.");
            return Optional.empty();
        }
        double number = Double.parseDouble(text);
        if (!(number >= low && number <= high)) {
            refuse(column, text + " does not lie between " + plain(low) + " and " + plain(high) + ".");
            return Optional.empty();
        }
        return Optional.of(number);
    }

    <T> Optional<T> oneOf(String column, Map<String, T> values) {
        T value = values.get(row.cell(column));
        if (value == null) {
            refuse(column, quoted(column) + " is not known here. Write " + String.join(" | ", values.keySet()) + ".");
        }
        return Optional.ofNullable(value);
    }

    /** What another file has under this name. */
    <T> Optional<T> named(String column, Map<String, T> others, String where) {
        T other = others.get(row.cell(column));
        if (other == null) {
            refuse(column, quoted(column) + " is not in " + where + ".");
        }
        return Optional.ofNullable(other);
    }

    void refuse(String column, String reason) {
        problems.add(new FileProblem(file, row.line(), column, reason));
    }

    private String quoted(String column) {
        return isEmpty(column) ? "an empty cell" : '"' + row.cell(column) + '"';
    }

    private static String plain(double limit) {
        return limit == Math.rint(limit) ? Long.toString((long) limit) : Double.toString(limit);
    }
}
