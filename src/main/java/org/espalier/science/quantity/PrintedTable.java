package org.espalier.science.quantity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A printed table kept as a resource: comment lines that begin with # and tell source, population, rounding and state
 * of checking, a header row, then rows of comma-separated cells; a cell with commas stands in quotation marks.
 *
 * @param remarks the comment lines, without their mark
 * @param rows the rows, in order
 */
public record PrintedTable(List<String> remarks, List<Row> rows) {

    private static final Pattern CELL = Pattern.compile("\\G(?:\"([^\"]*)\"|([^,\"]*))(?:,|$)");

    /**
     * One row.
     *
     * @param cells text by column
     */
    public record Row(Map<String, String> cells) {

        /** The text of a cell. */
        public String text(String column) {
            return Objects.requireNonNull(cells.get(column), column);
        }

        /** The number in a cell. */
        public double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    /**
     * Reads a table that lies beside a class.
     *
     * @param owner the class whose table it is
     * @param name the file's name
     * @throws IllegalStateException if it is not there or a row does not fit its header
     */
    public static PrintedTable of(Class<?> owner, String name) {
        try (InputStream stream = owner.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The table " + name + " is missing beside " + owner.getName());
            }
            var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return of(reader.lines().filter(line -> !line.isBlank()).toList(), name);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static PrintedTable of(List<String> lines, String name) {
        List<String> remarks = lines.stream()
                .filter(line -> line.startsWith("#"))
                .map(line -> line.substring(1).strip())
                .toList();
        List<List<String>> table = lines.stream()
                .filter(line -> !line.startsWith("#"))
                .map(PrintedTable::cells)
                .toList();
        List<String> header = table.getFirst();
        List<Row> rows =
                table.stream().skip(1).map(cells -> row(header, cells, name)).toList();
        return new PrintedTable(remarks, rows);
    }

    private static Row row(List<String> header, List<String> cells, String name) {
        if (cells.size() != header.size()) {
            throw new IllegalStateException("A row of " + name + " does not fit its header: " + cells);
        }
        Map<String, String> byColumn = new HashMap<>();
        for (int i = 0; i < cells.size(); i++) {
            byColumn.put(header.get(i), cells.get(i));
        }
        return new Row(Map.copyOf(byColumn));
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        Matcher cell = CELL.matcher(line);
        while (cell.find() && cell.start() < line.length()) {
            cells.add(cell.group(1) == null ? cell.group(2) : cell.group(1));
        }
        return cells;
    }
}
