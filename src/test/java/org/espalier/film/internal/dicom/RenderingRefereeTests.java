package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Greys and colours pixel by pixel against dcmtk, where it is installed: rounding may differ, by 1 of 255. */
class RenderingRefereeTests {

    private static final int HEADER_LINES = 3;

    @TempDir
    Path scratch;

    @ParameterizedTest
    @CsvSource(textBlock = """
            calibration/dx-14bit-sigmoid-inverse, +Wi, 1, 0
            calibration/dx-14bit-sigmoid-inverse, +Wi, 2, 1
            films/cr-tiny-mono1-ips,              +Wi, 1, 0
            films/hip-cr-jpeg-lossless-sv1,       +Wi, 1, 0
            films/ct-deflated,                    +Wi, 1, 0
            films/ot-voi-lut-sequence,            +Wl, 1, 0
            """)
    void rendersGreysAsAnotherProgramDoes(String name, String option, String number, int preset)
            throws IOException, InterruptedException {
        Path file = Fixtures.file(name + ".dcm");
        DataSet film = Films.read(file).dataSet();
        StoredImage image = Films.decoded(Films.read(file));
        GreyTransform grey = GreyTransform.of(film, image).orElseThrow();
        byte[] table = grey.table(grey.presets().get(preset));
        byte[] light = new byte[image.samples().length];
        for (int i = 0; i < light.length; i++) {
            light[i] = table[image.samples()[i] & 0xFFFF];
        }
        assertThat(furthest(light, rendered(file, option, number))).isLessThanOrEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            us-palette,     1
            sc-rgb-16bit,   1
            sc-jpeg-ybr422, 2
            """)
    void rendersColoursAsAnotherProgramDoes(String name, int tolerance) throws IOException, InterruptedException {
        Path file = Fixtures.file("films/" + name + ".dcm");
        StoredImage image = Films.decoded(Films.read(file));
        ColourImage colours = ColourImage.of(Films.read(file).dataSet(), image).orElseThrow();
        assertThat(furthest(colours.rgb(), rendered(file))).isLessThanOrEqualTo(tolerance);
    }

    private byte[] rendered(Path film, String... options) throws IOException, InterruptedException {
        Path picture = scratch.resolve("picture.pnm");
        String[] command = new String[options.length + 4];
        command[0] = "dcmj2pnm";
        command[1] = "+op";
        System.arraycopy(options, 0, command, 2, options.length);
        command[options.length + 2] = film.toString();
        command[options.length + 3] = picture.toString();
        assumeTrue(isRun(command), "dcmj2pnm is not installed here: no referee for " + film.getFileName());
        byte[] file = Files.readAllBytes(picture);
        int start = 0;
        for (int line = 0; line < HEADER_LINES; start++) {
            line += file[start] == '\n' ? 1 : 0;
        }
        return Arrays.copyOfRange(file, start, file.length);
    }

    private boolean isRun(String... command) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(scratch.resolve("referee.log").toFile())
                    .start();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    private static int furthest(byte[] ours, byte[] theirs) {
        assertThat(ours).hasSameSizeAs(theirs);
        int furthest = 0;
        for (int i = 0; i < ours.length; i++) {
            furthest = Math.max(furthest, Math.abs((ours[i] & 0xFF) - (theirs[i] & 0xFF)));
        }
        return furthest;
    }
}
