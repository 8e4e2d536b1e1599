package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColourImageTests {

    /** Pure red in the equations of PS3.3 section C.7.6.3.1.2: Y 76, CB 85, CR 255. */
    @Test
    void turnsLuminanceAndColourDifferencesIntoRed() {
        DataSet picture = picture("YBR_FULL", 8)
                .bytes(Tag.PIXEL_DATA, "OB", new byte[] {76, 85, -1, 0, -128, -128})
                .read();
        assertThat(colours(picture)).containsExactly(254, 0, 0, 0, 0, 0);
    }

    @Test
    void sharesColourBetweenTwoPixels() {
        DataSet picture = picture("YBR_FULL_422", 8)
                .bytes(Tag.PIXEL_DATA, "OB", new byte[] {10, 20, -128, -128})
                .read();
        assertThat(colours(picture)).containsExactly(10, 10, 10, 20, 20, 20);
    }

    @Test
    void brings16BitsTo8() {
        DataSet picture = picture("RGB", 16)
                .shorts(Tag.PIXEL_DATA, "OW", 0, 257, 65535, 32896, 1, 65534)
                .read();
        assertThat(colours(picture)).containsExactly(0, 1, 255, 128, 0, 255);
    }

    @Test
    void readsPalettes() {
        DataSet picture = new Part10Writer()
                .shorts(Tag.SAMPLES_PER_PIXEL, "US", 1)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, "CS", "PALETTE COLOR")
                .shorts(Tag.ROWS, "US", 1)
                .shorts(Tag.COLUMNS, "US", 2)
                .shorts(Tag.BITS_ALLOCATED, "US", 8)
                .shorts(Tag.BITS_STORED, "US", 8)
                .shorts(Tag.RED_PALETTE_DESCRIPTOR, "US", 2, 4, 16)
                .shorts(Tag.GREEN_PALETTE_DESCRIPTOR, "US", 2, 4, 16)
                .shorts(Tag.BLUE_PALETTE_DESCRIPTOR, "US", 2, 4, 16)
                .shorts(Tag.RED_PALETTE, "OW", 0, 65535)
                .shorts(Tag.GREEN_PALETTE, "OW", 257, 0)
                .shorts(Tag.BLUE_PALETTE, "OW", 514, 0)
                .bytes(Tag.PIXEL_DATA, "OB", new byte[] {0, 9})
                .read();
        assertThat(colours(picture)).containsExactly(0, 1, 2, 255, 0, 0);
    }

    private static Part10Writer picture(String photometric, int bits) {
        return new Part10Writer()
                .shorts(Tag.SAMPLES_PER_PIXEL, "US", 3)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, "CS", photometric)
                .shorts(Tag.PLANAR_CONFIGURATION, "US", 0)
                .shorts(Tag.ROWS, "US", 1)
                .shorts(Tag.COLUMNS, "US", 2)
                .shorts(Tag.BITS_ALLOCATED, "US", bits)
                .shorts(Tag.BITS_STORED, "US", bits);
    }

    private static int[] colours(DataSet picture) {
        StoredImage image = Films.decoded(new DicomFile(picture, picture, TransferSyntax.EXPLICIT_LITTLE_ENDIAN));
        byte[] rgb = ColourImage.of(picture, image).orElseThrow().rgb();
        int[] colours = new int[rgb.length];
        for (int i = 0; i < rgb.length; i++) {
            colours[i] = rgb[i] & 0xFF;
        }
        return colours;
    }
}
