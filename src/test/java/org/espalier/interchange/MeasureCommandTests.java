package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureCommandTests {

    private static final String HEADER = "film,side,mm_per_px_x,mm_per_px_y,landmark,x_px,y_px\n";

    /** A constructed limb with bowed tibia (invented): mLDFA 89.99, mMPTA 72, JLCA 4.01, HKA 22 varus, MAD -39.06. */
    private static final String BOWED = HEADER + """
            F1,R,0.1,0.1,hip_centre,0,0
            F1,R,0.1,0.1,condyle_medial,139.1,2309.4
            F1,R,0.1,0.1,condyle_lateral,632.1,2225.5
            F1,R,0.1,0.1,plateau_medial,146.9,2351.2
            F1,R,0.1,0.1,plateau_lateral,644.4,2302.0
            F1,R,0.1,0.1,plafond_medial,-146.5,4101.7
            F1,R,0.1,0.1,plafond_lateral,146.5,4165.9
            """;

    @TempDir
    Path folder;

    private record Outcome(int status, String out, String err) {}

    @Test
    void writesTheNumbersInTheirOrderWithFourDecimals() throws IOException {
        Outcome outcome = measure(BOWED);
        assertThat(outcome.status()).isZero();
        assertThat(outcome.err()).isEmpty();
        List<String> lines = outcome.out().lines().toList();
        assertThat(lines.getFirst()).isEqualTo("film,side,quantity,value,unit");
        assertThat(lines.stream().skip(1))
                .extracting(line -> line.replaceAll(",-?\\d+\\.\\d{4},", ","))
                .containsExactly(
                        "F1,R,mLDFA,deg",
                        "F1,R,mMPTA,deg",
                        "F1,R,LDTA,deg",
                        "F1,R,JLCA,deg",
                        "F1,R,HKA,deg",
                        "F1,R,BONY_HKA,deg",
                        "F1,R,MAD,mm",
                        "F1,R,WBL,percent",
                        "F1,R,KNEE_OFFSET,mm",
                        "F1,R,FEMUR_LENGTH,mm",
                        "F1,R,TIBIA_LENGTH,mm",
                        "F1,R,LIMB_LENGTH,mm");
        assertThat(valueOf(lines, "HKA")).isCloseTo(22, within(0.02));
        assertThat(valueOf(lines, "MAD")).isCloseTo(-39.06, within(0.02));
    }

    @Test
    void writesNoMillimetresForAFilmThatIsNotCalibrated() throws IOException {
        Outcome outcome = measure(BOWED.replace(",0.1,0.1,", ",,,"));
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out()).contains("HKA").contains("WBL").doesNotContain(",mm");
    }

    @Test
    void bringsPixelsThatAreNotSquareToMillimetresBeforeAnyAngle() throws IOException {
        String narrow = BOWED.replace(",0.1,0.1,", ",0.1,0.05,")
                .replace(",2309.4", ",4618.8")
                .replace(",2225.5", ",4451.0")
                .replace(",2351.2", ",4702.4")
                .replace(",2302.0", ",4604.0")
                .replace(",4101.7", ",8203.4")
                .replace(",4165.9", ",8331.8");
        assertThat(measure(narrow).out()).isEqualTo(measure(BOWED).out());
    }

    @Test
    void keepsFilmsAndSidesApartInTheOrderOfTheFile() throws IOException {
        String other = BOWED.replace(HEADER, "").replace("F1,R", "\"Hip, knee\",L");
        String shuffled = HEADER + other + BOWED.replace(HEADER, "");
        List<String> lines = measure(shuffled).out().lines().toList();
        assertThat(lines).hasSize(25);
        assertThat(lines.get(1)).startsWith("\"Hip, knee\",L,mLDFA,");
        assertThat(lines.get(13)).startsWith("F1,R,mLDFA,");
        assertThat(lines.get(1).replace("\"Hip, knee\",L", ""))
                .isEqualTo(lines.get(13).replace("F1,R", ""));
    }

    @ParameterizedTest(name = "line {2}, column {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "F1,R,0.1,0.1,hip_centre,0,0|F1,X,0.1,0.1,hip_centre,0,0|2|side|no side",
                "F1,R,0.1,0.1,hip_centre,0,0|,R,0.1,0.1,hip_centre,0,0|2|film|no name",
                "condyle_medial,139.1,2309.4|condyle_medial,139.1,|3|y_px|this cell is empty",
                "condyle_medial,139.1,2309.4|condyle_medial,NaN,2309.4|3|x_px|not a number",
                "condyle_medial,139.1,2309.4|condyle_medial,1e999,2309.4|3|x_px|not a number",
                "condyle_medial,139.1,2309.4|condyle_medial,0x1p3,2309.4|3|x_px|not a number",
                "0.1,0.1,condyle_lateral|0,0.1,condyle_lateral|4|mm_per_px_x|not above 0",
                "0.1,0.1,condyle_lateral|0.1,-1,condyle_lateral|4|mm_per_px_y|not above 0",
                "0.1,0.1,condyle_lateral|,0.1,condyle_lateral|4|mm_per_px_x|Give both",
                "0.1,0.1,condyle_lateral|0.2,0.2,condyle_lateral|4|mm_per_px_x|another scale in line 2",
                "plateau_medial|plateau_media|5|landmark|not the name of a landmark",
                "plateau_medial|condyle_lateral|5|landmark|already set in line 4",
                "plafond_lateral,146.5,4165.9|plafond_lateral,146.5|8|y_px|6 cells",
                "plafond_lateral,146.5,4165.9|plafond_lateral,146.5,4165.9,1|8|y_px|8 cells",
                "mm_per_px_x|scale|1|mm_per_px_x|lacks this column",
                "mm_per_px_x|scale|1|scale|may not have this column"
            })
    void takesNothingOfAFileWithABadRowAndNamesTheSpot(String good, String bad, int line, String column, String reason)
            throws IOException {
        Outcome outcome = measure(BOWED.replaceFirst(Pattern.quote(good), bad));
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err().lines().filter(text -> text.contains(reason)))
                .singleElement()
                .asString()
                .startsWith(file() + ", line " + line + ", column " + column + ": ");
    }

    @Test
    void takesTheGoodRowsWhenAskedToAndListsTheRest() throws IOException {
        Outcome outcome = measure(BOWED.replace("plafond_medial,-146.5", "plafond_medial,left"), "--partial");
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.out()).contains("mLDFA").contains("JLCA").doesNotContain("HKA");
        assertThat(outcome.err()).contains(", line 7, column x_px: \"left\" is not a number");
    }

    @Test
    void saysWhereAQuotationMarkIsNotClosed() throws IOException {
        Outcome outcome = measure(BOWED + "\"F2,R,0.1,0.1,hip_centre,0,0\n");
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains(", line 9,").contains("quotation mark");
    }

    @Test
    void saysWhereTheFileIsNotUtf8() throws IOException {
        Files.write(file(), (BOWED + "Füße,R,,,hip_centre,0,0\n").getBytes(StandardCharsets.ISO_8859_1));
        Outcome outcome = run(List.of(file().toString()), "");
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.err()).contains(", line 9,").contains("UTF-8");
    }

    @Test
    void readsFilesAsSpreadsheetsSaveThem() throws IOException {
        String saved = "\uFEFF" + BOWED.replace("\n", "\r\n").stripTrailing();
        assertThat(measure(saved).out()).isEqualTo(measure(BOWED).out());
        Outcome badLastLine = measure(saved.replace("4165.9", "4165,9"));
        assertThat(badLastLine.err()).contains(", line 8, column y_px: the row has 8 cells");
    }

    @Test
    void explainsANumberThatCouldNotBeMeasured() throws IOException {
        Outcome outcome = measure(BOWED.replace("condyle_medial,139.1,2309.4", "condyle_medial,632.1,2225.5"));
        assertThat(outcome.status()).isZero();
        assertThat(outcome.out()).contains("mMPTA").doesNotContain("mLDFA");
        assertThat(outcome.err()).contains("Film F1 R: no mLDFA, because two of its points lie on each other.");
    }

    @Test
    void readsFromStandardInput() {
        assertThat(run(List.of("-"), BOWED).out()).contains("F1,R,HKA,2");
    }

    @Test
    void neverWritesMinusZero() {
        String straight = HEADER + """
                F1,L,,,condyle_medial,0,100
                F1,L,,,condyle_lateral,60,100.00000001
                F1,L,,,plateau_medial,0,110
                F1,L,,,plateau_lateral,60,110
                """;
        assertThat(run(List.of("-"), straight).out()).contains("F1,L,JLCA,0.0000,deg");
    }

    @Test
    void explainsItsUse() {
        assertThat(run(List.of("--help"), "").status()).isZero();
        assertThat(run(List.of("--help"), "").err()).startsWith("Usage: measure");
        assertThat(run(List.of(), "").status()).isEqualTo(2);
        assertThat(run(List.of("a.csv", "b.csv"), "").status()).isEqualTo(2);
        assertThat(run(List.of("--all"), "").status()).isEqualTo(2);
    }

    @Test
    void saysSoWhenTheFileIsNotThere() {
        Outcome outcome = run(List.of(folder.resolve("none.csv").toString()), "");
        assertThat(outcome.status()).isEqualTo(2);
        assertThat(outcome.err()).contains("none.csv could not be read");
    }

    private Path file() {
        return folder.resolve("landmarks.csv");
    }

    private Outcome measure(String text, String... options) throws IOException {
        Files.writeString(file(), text);
        var args = new ArrayList<>(List.of(options));
        args.add(file().toString());
        return run(args, "");
    }

    private static Outcome run(List<String> args, String input) {
        var out = new ByteArrayOutputStream();
        var err = new ByteArrayOutputStream();
        int status = MeasureCommand.run(
                args,
                new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Outcome(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static double valueOf(List<String> lines, String quantity) {
        return lines.stream()
                .map(line -> line.split(",", -1))
                .filter(cells -> cells[2].equals(quantity))
                .mapToDouble(cells -> Double.parseDouble(cells[3]))
                .findFirst()
                .orElseThrow();
    }
}
