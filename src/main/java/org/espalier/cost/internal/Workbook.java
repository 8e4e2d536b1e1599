package org.espalier.cost.internal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** A sheet as a workbook of Office Open XML. Texts are texts there, whatever they begin with. */
final class Workbook {

    private static final String APPLICATION = "Espalier";
    private static final String VERSION = "1.0";
    private static final String DAY = "yyyy-mm-dd";
    private static final int WIDTH = 18;

    private Workbook() {}

    static byte[] of(Sheet sheet) {
        var bytes = new ByteArrayOutputStream();
        try (var book = new org.dhatim.fastexcel.Workbook(bytes, APPLICATION, VERSION)) {
            write(sheet, book.newWorksheet(sheet.name()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static void write(Sheet sheet, Worksheet page) {
        for (int column = 0; column < sheet.headings().size(); column++) {
            page.value(0, column, sheet.headings().get(column));
            page.width(column, WIDTH);
            page.style(0, column).bold().set();
        }
        page.freezePane(0, 1);
        for (int row = 0; row < sheet.rows().size(); row++) {
            for (int column = 0; column < sheet.headings().size(); column++) {
                write(page, row + 1, column, sheet.rows().get(row).get(column));
            }
        }
    }

    private static void write(Worksheet page, int row, int column, @Nullable Object value) {
        switch (value) {
            case null -> {}
            case LocalDate day -> {
                page.value(row, column, day);
                page.style(row, column).format(DAY).set();
            }
            case Number number -> page.value(row, column, number);
            default -> page.value(row, column, value.toString());
        }
    }
}
