package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Films sample by sample against other programs: lossy decoders may differ by rounding, never by more. */
class RefereeTests {

    @TempDir
    Path scratch;

    @ParameterizedTest
    @CsvSource(textBlock = """
            hip-cr-jpeg-ext-12bit-lossy, DCMTK_JPEG,    1
            ct-jpeg-baseline-8bit,       DCMTK_JPEG,    1
            sc-jpeg-ybr422,              DCMTK_JPEG,    1
            hip-cr-jpeg-lossless-sv1,    DCMTK_JPEG,    0
            ct-jpeg-lossless-57,         DCMTK_JPEG,    0
            chest-cr-jpegls-near,        DCMTK_JPEG_LS, 0
            tibia-cr-j2k-lossy,          PYDICOM,       1
            """)
    void differsFromAnotherProgramByRoundingAlone(String name, Referee referee, int tolerance)
            throws InterruptedException {
        Path film = Fixtures.file("films/" + name + ".dcm");
        StoredImage image = Films.decoded(Films.read(film));
        StoredImage other = referee.decoded(film, scratch);
        assertThat(other.samples()).hasSameSizeAs(image.samples());
        int largest = 0;
        for (int i = 0; i < image.samples().length; i++) {
            largest = Math.max(largest, Math.abs(other.value(i) - image.value(i)));
        }
        assertThat(largest).isLessThanOrEqualTo(tolerance);
    }
}
