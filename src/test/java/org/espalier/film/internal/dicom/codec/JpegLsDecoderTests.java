package org.espalier.film.internal.dicom.codec;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.ByteBuffer;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class JpegLsDecoderTests {

    /** The worked example of T.87 annex H.3, from memory; that stream and picture fit each other confirms both. */
    @Test
    void decodesTheWorkedExampleOfTheStandard() throws CodeStreamException {
        byte[] stream = HexFormat.of()
                .parseHex("ffd8fff7000b08000400040101" + "1100ffda0008010100000000" + "c000006c80208e01c0000057"
                        + "4000006ee6000001bc180000" + "05d800009160ffd9");
        short[] samples = JpegLsDecoder.decode(ByteBuffer.wrap(stream), new Shape(4, 4, 1));
        assertThat(samples).containsExactly(0, 0, 90, 74, 68, 50, 43, 205, 64, 145, 145, 145, 100, 145, 145, 145);
    }
}
