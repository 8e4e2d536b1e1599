package org.espalier.cost.internal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * A sheet as comma-separated values of RFC 4180, in UTF-8, days of ISO 8601, a point before decimals. A text that a
 * spreadsheet would take for a formula gets an apostrophe before it.
 */
final class CsvFile {

    private static final String FORMULA = "=+-@\t\r";

    private CsvFile() {}

    static byte[] of(Sheet sheet) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
            printer.printRecord(sheet.headings());
            for (var row : sheet.rows()) {
                printer.printRecord(row.stream().map(CsvFile::cell).toArray());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static @Nullable Object cell(@Nullable Object value) {
        return value instanceof String text ? guarded(text) : value;
    }

    /** The same, unless it begins as a formula does. */
    static String guarded(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
