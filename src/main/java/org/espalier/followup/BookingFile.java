package org.espalier.followup;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The file a hospital's booking system writes each day: {@code number,booking,date,time,outcome}, days and times as ISO
 * 8601, the outcome empty while the day is to come. A cell that begins like a formula is never taken.
 *
 * @param rows what can be read
 * @param refused what cannot, and why
 */
record BookingFile(List<BookingRow> rows, List<BookingLine> refused) {

    private static final List<String> COLUMNS = List.of("number", "booking", "date", "time", "outcome");
    private static final String FORMULA = "=+-@\t\r";
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .setIgnoreHeaderCase(true)
            .setTrim(true)
            .get();

    static BookingFile of(String text) {
        var rows = new ArrayList<BookingRow>();
        var refused = new ArrayList<BookingLine>();
        try (var parser = FORMAT.parse(new StringReader(text.replaceFirst("^\uFEFF", "")))) {
            var named = parser.getHeaderNames().stream()
                    .map(name -> name.toLowerCase(Locale.ROOT))
                    .toList();
            if (!named.containsAll(COLUMNS)) {
                return new BookingFile(List.of(), List.of(BookingLine.refused(1, "", BookingProblem.COLUMNS)));
            }
            readAll(parser, rows, refused);
        } catch (IOException | IllegalArgumentException e) {
            return new BookingFile(List.of(), List.of(BookingLine.refused(1, "", BookingProblem.COLUMNS)));
        }
        return new BookingFile(rows, refused);
    }

    /** What stands before a place that breaks the file is read. */
    private static void readAll(CSVParser parser, List<BookingRow> rows, List<BookingLine> refused) {
        long last = 1;
        try {
            for (var record : parser) {
                read(record, rows, refused);
                last = record.getRecordNumber() + 1;
            }
        } catch (UncheckedIOException | IllegalStateException e) {
            refused.add(BookingLine.refused(last + 1, "", BookingProblem.QUOTES));
        }
    }

    private static void read(CSVRecord record, List<BookingRow> rows, List<BookingLine> refused) {
        long line = record.getRecordNumber() + 1;
        if (!record.isConsistent()) {
            refused.add(BookingLine.refused(line, "", BookingProblem.COLUMNS));
            return;
        }
        problem(record)
                .ifPresentOrElse(
                        problem -> refused.add(BookingLine.refused(line, record.get("number"), problem)),
                        () -> rows.add(row(line, record)));
    }

    private static Optional<BookingProblem> problem(CSVRecord record) {
        if (COLUMNS.stream().map(record::get).anyMatch(BookingFile::isFormula)) {
            return Optional.of(BookingProblem.FORMULA);
        }
        if (record.get("number").isEmpty() || record.get("booking").isEmpty()) {
            return Optional.of(BookingProblem.NOTHING_IN_A_CELL);
        }
        if (day(record.get("date")).isEmpty()) {
            return Optional.of(BookingProblem.DATE);
        }
        if (!record.get("time").isEmpty() && time(record.get("time")).isEmpty()) {
            return Optional.of(BookingProblem.TIME);
        }
        boolean outcomeUnread = !record.get("outcome").isEmpty()
                && outcome(record.get("outcome")).isEmpty();
        return outcomeUnread ? Optional.of(BookingProblem.OUTCOME) : Optional.empty();
    }

    private static BookingRow row(long line, CSVRecord record) {
        return new BookingRow(
                line,
                record.get("number"),
                record.get("booking"),
                day(record.get("date")).orElseThrow(),
                time(record.get("time")).orElse(null),
                outcome(record.get("outcome")));
    }

    private static boolean isFormula(String cell) {
        return !cell.isEmpty() && FORMULA.indexOf(cell.charAt(0)) >= 0;
    }

    private static Optional<LocalDate> day(String cell) {
        try {
            return Optional.of(LocalDate.parse(cell));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<LocalTime> time(String cell) {
        try {
            return cell.isEmpty() ? Optional.empty() : Optional.of(LocalTime.parse(cell));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    private static Optional<BookingRow.Outcome> outcome(String cell) {
        var name = cell.toUpperCase(Locale.ROOT).replace(' ', '_');
        return Arrays.stream(BookingRow.Outcome.values())
                .filter(outcome -> outcome.name().equals(name))
                .findFirst();
    }
}
