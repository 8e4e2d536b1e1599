package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes a clinic's file: UTF-8, comma, heading, each cell kept from being taken for a formula. */
final class ClinicSheet {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();

    private ClinicSheet() {}

    static byte[] bytes(ClinicFile file, List<List<String>> rows) {
        var text = new StringBuilder();
        try (var printer = new CSVPrinter(text, FORMAT)) {
            printer.printRecord(file.columns());
            for (var row : rows) {
                printer.printRecord(row.stream().map(FormulaGuard::guarded).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }
}
