package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Real films against figures of general-purpose libraries. Stored values of the first frame by pydicom 2.3.1 with gdcm
 * 3.0.21, the same by dcmtk 3.6.7 except JPEG 2000; hash is the first 16 hexadecimal digits of SHA-256 over the values
 * as little-endian 32-bit numbers. Lossy films have no hash: extremes within 1, the mean within 0.01, since decoders
 * may round the inverse transform differently.
 */
class FixtureFilmsTests {

    @ParameterizedTest
    @CsvSource(textBlock = """
            hip-cr-j2k-lossless,       1760, 2140,     0,   893,   450.3763, 12693377e9ac9982
            hip-cr-jpeg-lossless-sv1,  1760, 2140,     0,   893,   450.3763, 12693377e9ac9982
            tibia-cr-rle,              1760, 1760,     0,  1023,   332.7147, 147dc159154527a0
            tibia-cr-jpegls-lossless,  1760, 1760,     0,  1023,   332.7147, 147dc159154527a0
            chest-cr-jpegls-near,      1841, 1955,   871, 26481,  7391.4593, c138034f908e196a
            ct-explicit-be,             512,  512, -2000,  2278,   152.6963, 824141bed775b72b
            ct-implicit-le,             512,  512, -2000,  2278,   152.6963, 824141bed775b72b
            ct-deflated,                512,  512, -2000,  2402,    74.9236, b76703cf422e7a4b
            ct-jpeg-lossless-57,        512,  512, -2000,  2402,    74.9236, b76703cf422e7a4b
            sc-rgb-16bit,               100,  100,     0, 65535, 32818.9000, f83371994262775f
            us-palette,                 800,  350,     0,   255,    53.6591, cabecdcfa0b31be6
            ot-voi-lut-sequence,        512,  512,     0,   255,   128.8300, a3c28e8f1b64b222
            cr-tiny-mono1-ips,           16,   16,  1994,  2802,  2523.7930, 3c310330233c1131
            """)
    void decodesEachSampleOfLosslessFilms(
            String name, int columns, int rows, int least, int greatest, double mean, String hash) {
        StoredImage image = decode("films/" + name);
        assertThat(image.columns()).isEqualTo(columns);
        assertThat(image.rows()).isEqualTo(rows);
        assertThat(values(image).min()).hasValue(least);
        assertThat(values(image).max()).hasValue(greatest);
        assertThat(values(image).average().orElseThrow()).isCloseTo(mean, within(0.00005));
        assertThat(hash(image)).isEqualTo(hash);
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            films/hip-cr-jpeg-ext-12bit-lossy,       1760, 2140,    0,   960,   450.8804
            films/tibia-cr-j2k-lossy,                1760, 1760,    0,  1023,   332.7166
            films/ct-jpeg-baseline-8bit,              512,  512,   30,   168,    95.8586
            films/sc-jpeg-ybr422,                     100,  100,    0,   255,   127.8800
            calibration/dx-ps-geometry,              1760, 1760,    0,  1023,   332.7166
            calibration/dx-ps-fiducial,              1760, 1760,    0,  1023,   332.7166
            calibration/dx-ps-equals-ips-no-caltype, 1760, 1760,    0,  1023,   332.7166
            calibration/dx-ips-mag-no-ps,            1760, 1760,    0,  1023,   332.7166
            calibration/dx-nonsquare-ps,             1760, 1760,    0,  1023,   332.7166
            calibration/dx-14bit-sigmoid-inverse,     512,  512, 3431, 16359, 10492.7463
            """)
    void decodesLossyFilmsAsOthersDo(String name, int columns, int rows, int least, int greatest, double mean) {
        StoredImage image = decode(name);
        assertThat(image.columns()).isEqualTo(columns);
        assertThat(image.rows()).isEqualTo(rows);
        assertThat(values(image).min().orElseThrow()).isCloseTo(least, within(1));
        assertThat(values(image).max().orElseThrow()).isCloseTo(greatest, within(1));
        assertThat(values(image).average().orElseThrow()).isCloseTo(mean, within(0.01));
    }

    private static StoredImage decode(String name) {
        return Films.decoded(Films.read(Fixtures.file(name + ".dcm")));
    }

    private static IntStream values(StoredImage image) {
        return IntStream.range(0, image.samples().length).map(image::value);
    }

    private static String hash(StoredImage image) {
        ByteBuffer bytes = ByteBuffer.allocate(4 * image.samples().length).order(ByteOrder.LITTLE_ENDIAN);
        values(image).forEach(bytes::putInt);
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes.array());
            return HexFormat.of().formatHex(digest, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
