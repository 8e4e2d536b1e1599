package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

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
            refuse(column, FileReason.EMPTY);
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
            refuseAsItIs(column, FileReason.NOT_A_DATE);
            return Optional.empty();
        }
    }

    Optional<Double> number(String column, double low, double high) {
        String text = row.cell(column);
        if (!NUMBER.matcher(text).matches()) {
            refuseAsItIs(column, FileReason.NOT_A_NUMBER);
            return Optional.empty();
        }
        double number = Double.parseDouble(text);
        if (!(number >= low && number <= high)) {
            refuse(column, FileReason.OUT_OF_RANGE, text, plain(low), plain(high));
            return Optional.empty();
        }
        return Optional.of(number);
    }

    <T> Optional<T> oneOf(String column, Map<String, T> values) {
        T value = values.get(row.cell(column));
        if (value == null) {
            refuseAsItIs(column, FileReason.NOT_KNOWN, String.join(" | ", values.keySet()));
        }
        return Optional.ofNullable(value);
    }

    /** What the good rows of another file have under this name. */
    <T> Optional<T> named(String column, Map<String, T> others, String file) {
        T other = others.get(row.cell(column));
        if (other == null) {
            refuseAsItIs(column, FileReason.NOT_IN_FILE, file);
        }
        return Optional.ofNullable(other);
    }

    /** Refuses what stands in a cell; an empty one is said to be empty. */
    private void refuseAsItIs(String column, FileReason reason, Object... details) {
        if (isEmpty(column)) {
            refuse(column, FileReason.EMPTY);
        } else {
            refuse(
                    column,
                    reason,
                    Stream.concat(Stream.of(row.cell(column)), Stream.of(details))
                            .toArray());
        }
    }

    void refuse(String column, FileReason reason, Object... details) {
        problems.add(FileProblem.of(file, row.line(), column, reason, details));
    }

    private static String plain(double limit) {
        return limit == Math.rint(limit) ? Long.toString((long) limit) : Double.toString(limit);
    }
}
