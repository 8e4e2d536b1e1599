package org.espalier.film.internal.dicom;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files that are known to have broken other programs, each with the reason a radiographer is given. */
class MalformedFilmsTests {

    @ParameterizedTest
    @CsvSource(textBlock = """
            2026-05-06-Deeply-Nested-Sequence,        NESTED_TOO_DEEP
            2026-05-26-oob-monochrome-46341,          TOO_MANY_PIXELS
            2026-05-26-oob-monochrome-65535,          TOO_MANY_PIXELS
            2017-06-27-XSSInjection,                  NO_PIXEL_DATA
            ExplVR_BigEndNoMeta,                      NOT_DICOM
            GH179A,                                   MALFORMED
            GH626,                                    MALFORMED
            JPEG2000-embedded-sequence-delimiter,     CODE_STREAM_BROKEN
            MR_truncated,                             TRUNCATED
            UN_sequence,                              NO_PIXEL_DATA
            badVR,                                    PIXELS_UNSUPPORTED
            emri_small_jpeg_2k_lossless_too_short,    TRUNCATED
            liver_nonbyte_aligned_j2k,                PIXELS_UNSUPPORTED
            meta_missing_tsyntax,                     TRANSFER_SYNTAX_MISSING
            no-meta-length-test,                      NO_PIXEL_DATA
            no_meta,                                  NOT_DICOM
            no_meta_group_length,                     NO_PIXEL_DATA
            rtplan_truncated,                         TRUNCATED
            """)
    void saysWhatIsWrong(String name, Refusal reason) {
        Path file = Fixtures.file("malformed/" + name + ".dcm");
        Refusal said =
                switch (DicomReader.read(file, Limits.STANDARD)) {
                    case ReadResult.Refused(Refusal refusal, String detail) -> refusal;
                    case ReadResult.Read(DicomFile film) ->
                        switch (PixelDecoder.decode(film, Limits.STANDARD)) {
                            case Decoded.Refused(Refusal refusal, String detail) -> refusal;
                            case StoredImage image -> throw new AssertionError("decoded " + name);
                        };
                };
        assertThat(said).isEqualTo(reason);
    }
}
