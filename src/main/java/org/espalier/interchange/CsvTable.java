package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A file of comma-separated values in UTF-8 with a header row: the rows that could be read, and what was wrong with the
 * others. Without a usable header there are no rows.
 *
 * @param rows the rows with as many cells as the header, in order
 * @param problems what was wrong, in order
 */
record CsvTable(List<Row> rows, List<FileProblem> problems) {

    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setIgnoreEmptyLines(true)
            .setTrailingData(false)
            .get();

    /**
     * One row.
     *
     * @param line the line in which it ends, counted from 1
     * @param cells text by column, without blanks around it
     */
    record Row(long line, Map<String, String> cells) {

        String cell(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }
    }

    /**
     * Reads a file.
     *
     * @param file the file's name for problems
     * @param bytes what is in it
     * @param columns the columns it has to have, in any order
     */
    static CsvTable read(String file, byte[] bytes, List<String> columns) {
        CharBuffer text = CharBuffer.allocate(bytes.length);
        boolean isText = !StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(bytes), text, true)
                .isError();
        text.flip();
        if (!isText) {
            long line = 1 + text.chars().filter(c -> c == '\n').count();
            return new CsvTable(
                    List.of(), List.of(FileProblem.of(file, line, FileProblem.WHOLE_ROW, FileReason.NOT_UTF8)));
        }
        return new Reading(file, columns).read(withoutByteOrderMark(text.toString()));
    }

    private static String withoutByteOrderMark(String text) {
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private static final class Reading {

        private final String file;
        private final List<String> columns;
        private final List<Row> rows = new ArrayList<>();
        private final List<FileProblem> problems = new ArrayList<>();
        private long lastLine;

        Reading(String file, List<String> columns) {
            this.file = file;
            this.columns = columns;
        }

        CsvTable read(String text) {
            try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
                readRecords(parser);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return new CsvTable(List.copyOf(rows), List.copyOf(problems));
        }

        private void readRecords(CSVParser parser) {
            Iterator<CSVRecord> records = parser.iterator();
            try {
                List<String> header = records.hasNext() ? cells(records.next()) : List.of();
                lastLine = parser.getCurrentLineNumber();
                if (acceptsHeader(header)) {
                    while (records.hasNext()) {
                        CSVRecord row = records.next();
                        lastLine = parser.getCurrentLineNumber();
                        readRow(row, header);
                    }
                }
            } catch (UncheckedIOException e) {
                problems.add(FileProblem.of(file, lastLine + 1, FileProblem.WHOLE_ROW, FileReason.QUOTE_OPEN));
            }
        }

        private boolean acceptsHeader(List<String> header) {
            int before = problems.size();
            columns.stream()
                    .filter(column -> !header.contains(column))
                    .forEach(column ->
                            problems.add(FileProblem.of(file, 1, column, FileReason.COLUMN_MISSING, wanted())));
            var seen = new HashSet<String>();
            header.stream()
                    .filter(column -> !columns.contains(column) || !seen.add(column))
                    .forEach(column ->
                            problems.add(FileProblem.of(file, 1, column, FileReason.COLUMN_NOT_KNOWN, wanted())));
            return problems.size() == before;
        }

        private String wanted() {
            return String.join(", ", columns);
        }

        private void readRow(CSVRecord row, List<String> header) {
            List<String> cells = cells(row);
            if (cells.size() == header.size()) {
                Map<String, String> byColumn = new HashMap<>();
                for (int i = 0; i < cells.size(); i++) {
                    byColumn.put(header.get(i), cells.get(i));
                }
                rows.add(new Row(lastLine, byColumn));
            } else {
                String column = cells.size() < header.size() ? header.get(cells.size()) : header.getLast();
                problems.add(FileProblem.of(
                        file, lastLine, column, FileReason.CELLS_NOT_AS_HEADING, cells.size(), header.size()));
            }
        }

        private static List<String> cells(CSVRecord row) {
            return Stream.of(row.values()).map(String::strip).toList();
        }
    }
}
