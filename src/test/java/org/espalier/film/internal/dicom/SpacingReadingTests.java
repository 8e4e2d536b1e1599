package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.espalier.film.internal.dicom.SpacingReading.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The rules of PS3.3 section 10.7.1. */
class SpacingReadingTests {

    /** Real films with tags set on them for each case. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            calibration/dx-ps-geometry,               0.13,   0.13,   CALIBRATED_GEOMETRY
            calibration/dx-ps-fiducial,               0.1244, 0.1244, CALIBRATED_FIDUCIAL
            calibration/dx-ps-equals-ips-no-caltype,  0.143,  0.143,  DETECTOR_PLANE
            calibration/dx-ips-mag-no-ps,             0.143,  0.143,  DETECTOR_PLANE
            calibration/dx-nonsquare-ps,              0.2,    0.1,    UNDETERMINED
            calibration/dx-14bit-sigmoid-inverse,     0.143,  0.143,  DETECTOR_PLANE
            films/cr-tiny-mono1-ips,                  0.1,    0.1,    DETECTOR_PLANE
            films/hip-cr-j2k-lossless,                0.2,    0.2,    UNDETERMINED
            """)
    void readsFilmsAsTheyAreNamed(String name, double row, double column, Kind kind) {
        SpacingReading spacing = SpacingReading.of(
                        Films.read(Fixtures.file(name + ".dcm")).dataSet())
                .orElseThrow();
        assertThat(spacing.rowMillimetres()).isEqualTo(row);
        assertThat(spacing.columnMillimetres()).isEqualTo(column);
        assertThat(spacing.kind()).isEqualTo(kind);
        assertThat(spacing.magnification())
                .isEqualTo(name.contains("mag") ? OptionalDouble.of(1.15) : OptionalDouble.empty());
    }

    @Test
    void readsNoneFromRealFilmsWithoutOrWithZeroSpacing() {
        assertThat(SpacingReading.of(Films.read(Fixtures.file("films/chest-cr-jpegls-near.dcm"))
                        .dataSet()))
                .isEmpty();
        assertThat(SpacingReading.of(
                        Films.read(Fixtures.file("films/tibia-cr-rle.dcm")).dataSet()))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"0\\0", "0.2\\0", "-0.2\\0.2", "0.2", "0.2\\wide", "NaN\\NaN", "1e999\\1", "0.1\\0.1\\0.1", ""})
    void takesSpacingWithoutSenseForNone(String value) {
        assertThat(SpacingReading.of(
                        new Part10Writer().text(Tag.PIXEL_SPACING, "DS", value).read()))
                .isEmpty();
    }

    @Test
    void fallsBackToTheDetectorWherePixelSpacingIsZero() {
        assertThat(kind("0.15\\0.15", "0\\0", "FIDUCIAL")).isEqualTo(Kind.DETECTOR_PLANE);
    }

    @Test
    void tellsCalibrationFromRounding() {
        assertThat(kind("0.143\\0.143", "0.1430001\\0.143", "")).isEqualTo(Kind.DETECTOR_PLANE);
        assertThat(kind("0.143\\0.143", "0.13\\0.13", "")).isEqualTo(Kind.CALIBRATED_UNSTATED);
        assertThat(kind("0.143\\0.143", "0.143\\0.143", "GEOMETRY")).isEqualTo(Kind.CALIBRATED_GEOMETRY);
        assertThat(kind("", "0.143\\0.143", "OTHER")).isEqualTo(Kind.UNDETERMINED);
    }

    private static Kind kind(String imager, String pixel, String type) {
        DataSet film = new Part10Writer()
                .text(Tag.IMAGER_PIXEL_SPACING, "DS", imager)
                .text(Tag.PIXEL_SPACING, "DS", pixel)
                .text(Tag.PIXEL_SPACING_CALIBRATION_TYPE, "CS", type)
                .read();
        return SpacingReading.of(film).orElseThrow().kind();
    }
}
