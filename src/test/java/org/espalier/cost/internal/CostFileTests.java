package org.espalier.cost.internal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that a spreadsheet opens: numbers stay numbers, and no text becomes a formula. */
class CostFileTests {

    @TempDir
    Path folder;

    private static Sheet sheet(@Nullable Object... cells) {
        var headings = java.util.stream.IntStream.range(0, cells.length)
                .mapToObj(at -> "H" + at)
                .toList();
        return new Sheet("Charges", headings, List.of(Arrays.asList(cells)));
    }

    private static String csv(@Nullable Object... cells) {
        var lines = new String(CsvFile.of(sheet(cells)), StandardCharsets.UTF_8).split("\r\n");
        return lines[1];
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+44", "-cmd", "@SUM(A1)", "\t=1", "\r=1"})
    void aTextThatBeginsAsAFormulaIsGuarded(String text) {
        assertThat(CsvFile.guarded(text)).isEqualTo("'" + text);
        assertThat(csv("x", text)).matches("(?s)x,\"?'.*");
    }

    @Test
    void numbersBelowNothingAndDaysAreLeftAsTheyAre() {
        assertThat(csv(new BigDecimal("-12.50"), LocalDate.of(2026, 3, 1), null, "a, \"b\""))
                .isEqualTo("-12.50,2026-03-01,,\"a, \"\"b\"\"\"");
        assertThat(CsvFile.guarded("")).isEmpty();
    }

    @Test
    void aWorkbookKeepsTextsAsTextsAndNumbersAsNumbers() throws IOException {
        var parts = parts(Workbook.of(sheet("=1+1", new BigDecimal("-12.50"))));
        assertThat(parts).contains("<v>-12.50</v>").contains("=1+1").doesNotContain("<f>");
    }

    @Test
    void aRowIsAsWideAsItsHeadings() {
        assertThatThrownBy(() -> new Sheet("Charges", List.of("one"), List.of(Arrays.asList("a", "b"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private String parts(byte[] book) throws IOException {
        var file = Files.write(folder.resolve("costs.xlsx"), book).toFile();
        var text = new StringBuilder();
        try (var zip = new ZipFile(file)) {
            for (var entry : java.util.Collections.list(zip.entries())) {
                text.append(new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return text.toString();
    }
}
