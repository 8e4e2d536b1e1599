package org.espalier.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeCodesTests {

    private static final byte[] SECRET = ascii("12345678901234567890");
    private static final Instant NOW = Instant.ofEpochSecond(1_234_567_890);

    /**
     * RFC 6238, appendix B, with the seeds of its reference implementation, which repeat the digits to the length of
     * each hash (erratum 2866).
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            59,          94287082, HmacSHA1,   12345678901234567890
            59,          46119246, HmacSHA256, 12345678901234567890123456789012
            59,          90693936, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            1111111109,  07081804, HmacSHA1,   12345678901234567890
            1111111109,  68084774, HmacSHA256, 12345678901234567890123456789012
            1111111109,  25091201, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            1111111111,  14050471, HmacSHA1,   12345678901234567890
            1111111111,  67062674, HmacSHA256, 12345678901234567890123456789012
            1111111111,  99943326, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            1234567890,  89005924, HmacSHA1,   12345678901234567890
            1234567890,  91819424, HmacSHA256, 12345678901234567890123456789012
            1234567890,  93441116, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            2000000000,  69279037, HmacSHA1,   12345678901234567890
            2000000000,  90698825, HmacSHA256, 12345678901234567890123456789012
            2000000000,  38618901, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            20000000000, 65353130, HmacSHA1,   12345678901234567890
            20000000000, 77737706, HmacSHA256, 12345678901234567890123456789012
            20000000000, 47863826, HmacSHA512, 1234567890123456789012345678901234567890123456789012345678901234
            """)
    void areThoseOfTheStandard(long seconds, String code, String algorithm, String seed) {
        assertThat(new TimeCodes(8, algorithm).at(ascii(seed), Instant.ofEpochSecond(seconds)))
                .isEqualTo(code);
    }

    @Test
    void areTakenAStepEarlyAndAStepLateAndNoFurther() {
        var codes = new TimeCodes();
        long here = NOW.getEpochSecond() / 30;
        for (int away = -3; away <= 3; away++) {
            var code = codes.at(SECRET, NOW.plusSeconds(30L * away));
            var step = codes.step(SECRET, code, NOW, 0);
            if (Math.abs(away) <= 1) {
                assertThat(step).hasValue(here + away);
            } else {
                assertThat(step).isEmpty();
            }
        }
    }

    @Test
    void areTakenOnceAndNoneBeforeOneThatWasTaken() {
        var codes = new TimeCodes();
        long here = NOW.getEpochSecond() / 30;
        assertThat(codes.step(SECRET, codes.at(SECRET, NOW), NOW, here)).isEmpty();
        assertThat(codes.step(SECRET, codes.at(SECRET, NOW.minusSeconds(30)), NOW, here))
                .isEmpty();
        assertThat(codes.step(SECRET, codes.at(SECRET, NOW.plusSeconds(30)), NOW, here))
                .hasValue(here + 1);
    }

    @Test
    void areReadWithASpaceInTheMiddleAndNotWhenEmpty() {
        var codes = new TimeCodes();
        var code = codes.at(SECRET, NOW);
        assertThat(codes.step(SECRET, code.substring(0, 3) + " " + code.substring(3), NOW, 0))
                .isPresent();
        assertThat(codes.step(SECRET, "", NOW, 0)).isEmpty();
    }

    /** RFC 4648, section 10, without its padding. */
    @ParameterizedTest
    @CsvSource({"f,MY", "fo,MZXQ", "foo,MZXW6", "foob,MZXW6YQ", "fooba,MZXW6YTB", "foobar,MZXW6YTBOI"})
    void secretsAreWrittenAsTheStandardHasThem(String bytes, String text) {
        assertThat(Base32.of(ascii(bytes))).isEqualTo(text);
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
