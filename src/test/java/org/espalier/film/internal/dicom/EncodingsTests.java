package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A drawn picture as other programs encoded it: see README.md beside the files. */
class EncodingsTests {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "implicit-grey12",
                "big-endian-grey12",
                "big-endian-rgb8",
                "deflated-grey12",
                "rle-grey8",
                "rle-grey12",
                "rle-rgb8",
                "jpeg-lossless-1-grey16",
                "jpeg-lossless-2-grey12",
                "jpeg-lossless-3-grey16",
                "jpeg-lossless-4-grey12",
                "jpeg-lossless-5-grey16",
                "jpeg-lossless-6-grey12",
                "jpeg-lossless-7-grey16",
                "jpeg-lossless-first-order-rgb8",
                "jpeg-ls-grey8",
                "jpeg-ls-grey12",
                "jpeg-ls-grey16",
                "jpeg-ls-none-rgb8",
                "jpeg-ls-line-rgb8",
                "jpeg-ls-sample-rgb8",
                "j2k-lossless-grey8",
                "j2k-lossless-grey12",
                "j2k-lossless-rgb8"
            })
    void returnsEverySampleOfLosslessEncodings(String name) {
        assertThat(values(DrawnPicture.decoded(name)))
                .containsExactly(DrawnPicture.of(name).values());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "jpeg-ls-near-3-grey8",
                "jpeg-ls-near-3-grey12",
                "jpeg-ls-near-3-grey16",
                "jpeg-ls-near-3-sample-rgb8"
            })
    void staysAsNearAsNearLosslessEncodingPromises(String name) {
        assertThat(furthest(
                        values(DrawnPicture.decoded(name)),
                        DrawnPicture.of(name).values()))
                .isLessThanOrEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "jpeg-extended-grey12",
                "jpeg-baseline-grey8",
                "jpeg-baseline-444-rgb8",
                "jpeg-baseline-422-rgb8",
                "jpeg-baseline-411-rgb8"
            })
    void differsFromAnotherDecoderByRoundingAlone(String name) {
        int[] values = values(DrawnPicture.decoded(name));
        assertThat(furthest(values, values(DrawnPicture.decoded(name + ".plain"))))
                .isLessThanOrEqualTo(1);
    }

    private static int[] values(StoredImage image) {
        return IntStream.range(0, image.samples().length).map(image::value).toArray();
    }

    private static int furthest(int[] values, int[] expected) {
        assertThat(values).hasSameSizeAs(expected);
        return IntStream.range(0, values.length)
                .map(i -> Math.abs(values[i] - expected[i]))
                .max()
                .orElseThrow();
    }
}
