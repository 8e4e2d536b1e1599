package org.espalier.demo.drawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Set;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FilmFileTests {

    private static final Path DCMDUMP = Path.of("/usr/bin/dcmdump");
    private static final Path PYTHON = Path.of("/usr/bin/python3");

    private static DrawnFilm film;

    @TempDir
    private Path folder;

    @BeforeAll
    static void draw() {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.GIRL, 6);
        film = DrawnFilm.draw(new FilmOrder(
                body,
                DrawnLimb.straight(Side.RIGHT, body),
                DrawnLimb.straight(Side.LEFT, body),
                1,
                FilmOrder.FilmSheet.ofPixel(new Length(1)),
                5));
    }

    private static DrawnLabel label(DrawnLabel.Spacing spacing) {
        return new DrawnLabel(
                "D-0042",
                "Färnwald",
                "Iske",
                LocalDate.of(2017, 3, 9),
                "F",
                LocalDate.of(2023, 5, 4),
                "Haven of the Two Rivers",
                spacing);
    }

    private static byte[] written(DrawnLabel label) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new FilmFile(film, label).writeTo(out);
        return out.toByteArray();
    }

    @Test
    void writesTheSameFileTwice() throws IOException {
        assertThat(written(label(DrawnLabel.Spacing.DETECTOR))).isEqualTo(written(label(DrawnLabel.Spacing.DETECTOR)));
    }

    @Test
    void saysThatItIsDrawn() throws IOException {
        String text = new String(written(label(DrawnLabel.Spacing.DETECTOR)), StandardCharsets.ISO_8859_1);
        assertThat(text).contains("Drawn by a program", "Not a patient", "(drawn)");
    }

    @Test
    void isReadByAGeneralPurposeToolkit() throws Exception {
        assumeTrue(Files.isExecutable(DCMDUMP), "dcmdump is not installed; the file was not read by another program");
        String dump = run(
                DCMDUMP.toString(),
                stored(DrawnLabel.Spacing.FIDUCIAL, FilmEncoding.EXPLICIT).toString());
        assertThat(dump)
                .contains("DigitalXRayImageStorageForPresentation")
                .contains("[D-0042]")
                .contains("[1\\1]")
                .contains("[0.952381\\0.952381]")
                .contains("[FIDUCIAL]")
                .contains("[MONOCHROME2]")
                .doesNotContain("W: ")
                .doesNotContain("E: ");
    }

    @ParameterizedTest
    @EnumSource(FilmEncoding.class)
    void givesEveryPixelToAnotherReader(FilmEncoding encoding) throws Exception {
        assumeTrue(Files.isExecutable(PYTHON), "python3 is not installed; pixels were not read by another program");
        assumeTrue(
                run(PYTHON.toString(), "-c", "import pydicom, numpy").isBlank(), "pydicom with numpy is not installed");
        String script = """
                import pydicom, sys
                d = pydicom.dcmread(sys.argv[1])
                pixels = int(d.pixel_array.astype('int64').sum())
                print(d.PatientName.family_name, d.Rows, d.Columns, d.BitsStored, pixels)
                """;
        long sum = 0;
        for (short value : film.stored()) {
            sum += value;
        }
        assertThat(run(
                        PYTHON.toString(),
                        "-c",
                        script,
                        stored(DrawnLabel.Spacing.DETECTOR, encoding).toString()))
                .isEqualTo("Färnwald " + film.height() + " " + film.width() + " 12 " + sum + "\n");
    }

    private Path stored(DrawnLabel.Spacing spacing, FilmEncoding encoding) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new FilmFile(film, label(spacing), encoding).writeTo(out);
        return Files.write(folder.resolve("film.dcm"), out.toByteArray());
    }

    private static String run(String... command) throws Exception {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("PYTHONIOENCODING", "utf-8");
        Process process = builder.start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return out;
    }

    @Test
    void drawsOneLegAloneWithItsBallAndLetter() {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.BOY, 13);
        FilmOrder.FilmSheet sheet = FilmOrder.FilmSheet.ofPixel(new Length(1));
        DrawnLimb right = DrawnLimb.straight(Side.RIGHT, body);
        DrawnLimb left = DrawnLimb.straight(Side.LEFT, body);
        DrawnFilm alone = DrawnFilm.draw(new FilmOrder(body, right, left, 1.8, sheet, 5, Set.of(Side.RIGHT), false));
        DrawnFilm both = DrawnFilm.draw(new FilmOrder(body, right, left, 1.8, sheet, 5));
        assertThat(alone.shown()).contains(Side.RIGHT);
        assertThat(both.shown()).isEmpty();
        assertThat(alone.width()).isBetween(both.width() / 2 - 1, both.width() / 2 + 1);
        assertThat(alone.landmarks(Side.LEFT).points()).isEmpty();
        assertThat(alone.landmarks(Side.RIGHT)).isEqualTo(both.landmarks(Side.RIGHT));
        assertThat(alone.ball().centre().x()).isBetween(0.0, alone.width() - 1.0);
    }

    @Test
    void refusesALabelThatWouldBreakTheFile() {
        assertThatThrownBy(() -> new DrawnLabel(
                        "A\\B", "X", "Y", LocalDate.EPOCH, "F", LocalDate.EPOCH, "Z", DrawnLabel.Spacing.DETECTOR))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("A\\B");
    }
}
