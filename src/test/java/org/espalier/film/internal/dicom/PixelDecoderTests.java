package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PixelDecoderTests {

    private static final TransferSyntax PLAIN = TransferSyntax.EXPLICIT_LITTLE_ENDIAN;

    @Test
    void masksToTheStoredBitsAndSpreadsTheSign() {
        Part10Writer film =
                Part10Writer.grey(2, 2, 16, 12, true).shorts(Tag.PIXEL_DATA, "OW", 0xF7FF, 0x0800, 0x0FFF, 0x1001);
        assertThat(values(film, PLAIN)).containsExactly(2047, -2048, -1, 1);
    }

    @Test
    void keepsUnsignedValuesAboveThirtyTwoThousand() {
        Part10Writer film = Part10Writer.grey(2, 1, 16, 16, false).shorts(Tag.PIXEL_DATA, "OW", 0xFFFF, 0x8000);
        assertThat(values(film, PLAIN)).containsExactly(65535, 32768);
    }

    @Test
    void joinsTheFragmentsOfOneFrame() {
        byte[] stream = runLength(5, 6, 7, 8);
        byte[] first = Arrays.copyOf(stream, 66);
        byte[] second = Arrays.copyOfRange(stream, 66, stream.length);
        Part10Writer film = Part10Writer.grey(2, 2, 8, 8, false).fragments(new int[0], List.of(first, second));
        assertThat(values(film, TransferSyntax.RLE_LOSSLESS)).containsExactly(5, 6, 7, 8);
    }

    @Test
    void findsTheFirstOfSeveralFrames() {
        byte[] stream = runLength(5, 6, 7, 8);
        byte[] first = Arrays.copyOf(stream, 66);
        byte[] second = Arrays.copyOfRange(stream, 66, stream.length);
        int[] offsets = {0, 16 + stream.length};
        Part10Writer film = new Part10Writer()
                .shorts(Tag.SAMPLES_PER_PIXEL, "US", 1)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, "CS", "MONOCHROME2")
                .text(Tag.NUMBER_OF_FRAMES, "IS", "2")
                .shorts(Tag.ROWS, "US", 2)
                .shorts(Tag.COLUMNS, "US", 2)
                .shorts(Tag.BITS_ALLOCATED, "US", 8)
                .shorts(Tag.BITS_STORED, "US", 8)
                .fragments(offsets, List.of(first, second, runLength(0, 0, 0, 0)));
        assertThat(values(film, TransferSyntax.RLE_LOSSLESS)).containsExactly(5, 6, 7, 8);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            2, 2,  1,  1, PIXELS_UNSUPPORTED
            2, 2, 32, 32, PIXELS_UNSUPPORTED
            2, 2,  8, 12, PIXELS_DESCRIBED_WRONGLY
            0, 2,  8,  8, PIXELS_DESCRIBED_WRONGLY
            9, 9,  8,  8, PIXEL_DATA_SHORT
            65535, 65535, 16, 16, TOO_MANY_PIXELS
            """)
    void refusesWhatIsNoFilm(int columns, int rows, int allocated, int stored, Refusal reason) {
        Part10Writer film =
                Part10Writer.grey(columns, rows, allocated, stored, false).bytes(Tag.PIXEL_DATA, "OB", new byte[8]);
        assertThat(decode(film, PLAIN))
                .isInstanceOfSatisfying(Decoded.Refused.class, refused -> assertThat(refused.reason())
                        .isEqualTo(reason));
    }

    private static int[] values(Part10Writer film, TransferSyntax syntax) {
        StoredImage image = Films.decoded(Films.good(DicomReader.read(film.file(syntax), Limits.STANDARD)));
        return IntStream.range(0, image.samples().length).map(image::value).toArray();
    }

    private static Decoded decode(Part10Writer film, TransferSyntax syntax) {
        return PixelDecoder.decode(Films.good(DicomReader.read(film.file(syntax), Limits.STANDARD)), Limits.STANDARD);
    }

    /** One segment with one literal run (PS3.5 annex G). */
    private static byte[] runLength(int... values) {
        byte[] stream = new byte[64 + 1 + values.length + (values.length + 1) % 2];
        stream[0] = 1;
        stream[4] = 64;
        stream[64] = (byte) (values.length - 1);
        for (int i = 0; i < values.length; i++) {
            stream[65 + i] = (byte) values[i];
        }
        return stream;
    }
}
