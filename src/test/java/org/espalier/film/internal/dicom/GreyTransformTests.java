package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.espalier.film.internal.dicom.Window.Function;
import org.junit.jupiter.api.Test;

/** Values are worked out by hand from the equations of PS3.3 sections C.11.1 and C.11.2. */
class GreyTransformTests {

    /** The note of section C.11.2.1.2.1: centre 2048, width 4096 takes 0 to 4095 without loss. */
    @Test
    void takesTwelveBitsWholeThroughTheWindowOfTheStandardsNote() {
        Window window = new Window(2048, 4096, Function.LINEAR, "");
        assertThat(window.light(0)).isZero();
        assertThat(window.light(4095)).isEqualTo(1);
        assertThat(window.light(1)).isCloseTo(1 / 4095.0, within(1e-12));
    }

    /** The same note: a width of 1 is a step at the centre less a half. */
    @Test
    void stepsWhereTheWindowIsOneWide() {
        Window window = new Window(100, 1, Function.LINEAR, "");
        assertThat(window.light(99)).isZero();
        assertThat(window.light(100)).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> new Window(100, 0.5, Function.LINEAR, ""));
    }

    /** The note of section C.11.2.1.3.2: linear exact with centre 2048, width 4096 reaches white at 4096. */
    @Test
    void spansTheExactWindowFromEdgeToEdge() {
        Window window = new Window(2048, 4096, Function.LINEAR_EXACT, "");
        assertThat(window.light(0)).isZero();
        assertThat(window.light(2048)).isEqualTo(0.5);
        assertThat(window.light(4096)).isEqualTo(1);
    }

    @Test
    void bendsTheSigmoidAsTheStandardDefinesIt() {
        Window window = new Window(8000, 12000, Function.SIGMOID, "");
        assertThat(window.light(8000)).isEqualTo(0.5);
        assertThat(window.light(11000)).isCloseTo(1 / (1 + Math.exp(-1)), within(1e-12));
        assertThat(window.light(5000) + window.light(11000)).isCloseTo(1, within(1e-12));
    }

    @Test
    void rescalesThenWindowsThenInverts() {
        DataSet film = film("MONOCHROME1")
                .text(Tag.WINDOW_CENTER, "DS", "50\\0")
                .text(Tag.WINDOW_WIDTH, "DS", "100\\10")
                .text(Tag.RESCALE_INTERCEPT, "DS", "-10")
                .text(Tag.RESCALE_SLOPE, "DS", "2")
                .text(Tag.WINDOW_EXPLANATION, "LO", "BONE\\SOFT")
                .text(Tag.VOI_LUT_FUNCTION, "CS", "LINEAR_EXACT")
                .shorts(Tag.PIXEL_DATA, "OW", 0, 5, 30, 4095)
                .read();
        GreyTransform grey = transform(film);
        assertThat(grey.value(30)).isEqualTo(50);
        assertThat(grey.presets()).extracting(Voi::explanation).containsExactly("BONE", "SOFT");
        byte[] table = grey.table(grey.presets().getFirst());
        assertThat(table[5]).isEqualTo((byte) 255);
        assertThat(table[30]).isEqualTo((byte) 128);
        assertThat(table[4095]).isZero();
    }

    @Test
    void looksValuesUpInTablesAndHoldsTheirEnds() {
        Part10Writer table = new Part10Writer()
                .shorts(Tag.LUT_DESCRIPTOR, "US", 3, 10, 12)
                .text(Tag.LUT_EXPLANATION, "LO", "HARD")
                .shorts(Tag.LUT_DATA, "US", 0, 819, 4095);
        DataSet film = film("MONOCHROME2")
                .sequence(Tag.VOI_LUT_SEQUENCE, table)
                .shorts(Tag.PIXEL_DATA, "OW", 0, 10, 11, 12)
                .read();
        GreyTransform grey = transform(film);
        byte[] light = grey.table(grey.presets().getFirst());
        assertThat(new int[] {light[9] & 255, light[10] & 255, light[11] & 255, light[12] & 255, light[99] & 255})
                .containsExactly(0, 0, 51, 255, 255);
    }

    @Test
    void looksStoredValuesUpInTheModalityTable() {
        Part10Writer table =
                new Part10Writer().shorts(Tag.LUT_DESCRIPTOR, "US", 2, 0, 16).shorts(Tag.LUT_DATA, "US", 1000, 60000);
        DataSet film = film("MONOCHROME2")
                .sequence(Tag.MODALITY_LUT_SEQUENCE, table)
                .shorts(Tag.PIXEL_DATA, "OW", 0, 1, 1, 1)
                .read();
        assertThat(transform(film).value(0)).isEqualTo(1000);
        assertThat(transform(film).value(7)).isEqualTo(60000);
        assertThat(transform(film).standard(image(film)).light(60000)).isEqualTo(1);
    }

    @Test
    void spansAllValuesWhereTheSenderProposesNothing() {
        DataSet film = film("MONOCHROME2")
                .shorts(Tag.PIXEL_DATA, "OW", 100, 200, 300, 110)
                .read();
        assertThat(transform(film).standard(image(film))).isEqualTo(new Window(200, 200, Function.LINEAR_EXACT, ""));
    }

    private static Part10Writer film(String photometric) {
        return new Part10Writer()
                .shorts(Tag.SAMPLES_PER_PIXEL, "US", 1)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, "CS", photometric)
                .shorts(Tag.ROWS, "US", 2)
                .shorts(Tag.COLUMNS, "US", 2)
                .shorts(Tag.BITS_ALLOCATED, "US", 16)
                .shorts(Tag.BITS_STORED, "US", 12);
    }

    private static StoredImage image(DataSet film) {
        return Films.decoded(new DicomFile(film, film, TransferSyntax.EXPLICIT_LITTLE_ENDIAN));
    }

    private static GreyTransform transform(DataSet film) {
        return GreyTransform.of(film, image(film)).orElseThrow();
    }
}
