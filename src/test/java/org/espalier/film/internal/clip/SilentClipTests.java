package org.espalier.film.internal.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.espalier.film.TestClips;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SilentClipTests {

    private static final String WORD = "Quirina-51.4778N";

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.ISO_8859_1);
    }

    @Test
    void leavesOfAnMp4ItsFramesAloneAtTheirPlaces() throws ClipNotUnderstood {
        var before = TestClips.mp4(WORD);
        assertThat(text(before).split(WORD, -1)).as("planted").hasSizeGreaterThan(10);
        var after = before.clone();
        SilentMp4.strip(after);
        assertThat(text(after)).doesNotContain(WORD, "sound", "soun", "mp4a");
        assertThat(text(after)).doesNotContain(text(new byte[] {(byte) 0xDE, (byte) 0xAD}));
        var frame = text(TestClips.FRAME);
        assertThat(text(after).indexOf(frame))
                .isEqualTo(text(before).indexOf(frame))
                .isPositive();
        assertThat(text(after).lastIndexOf(frame)).isEqualTo(text(before).lastIndexOf(frame));
        assertThat(after).hasSameSizeAs(before);
        assertThat(Box.of(new ClipBytes(after), 0, after.length))
                .extracting(Box::name)
                .containsExactly("ftyp", "free", "moov", "mdat", "free");
    }

    /** ISO/IEC 14496-10, 7.3.2.3.1: kind 3 is filler, its content all ones, and a one ends the unit. */
    @Test
    void fillsWordsBesideThePictureWithFillerOfTheSameLength() throws ClipNotUnderstood {
        for (int length = 3; length < 600; length++) {
            var unit = new byte[length + 5];
            unit[2] = (byte) (length + 1 >> 8);
            unit[3] = (byte) (length + 1);
            unit[4] = 6;
            new Units(4, 1).fillWords(new ClipBytes(unit), new SampleTable.Sample(0, unit.length));
            int at = 5;
            while (at < unit.length - 1) {
                assertThat(unit[at]).as("kind at %s of %s", at, length).isEqualTo((byte) 3);
                at += 2 + (unit[at + 1] & 0xFF);
            }
            assertThat(at).isEqualTo(unit.length - 1);
            assertThat(unit[at]).isEqualTo((byte) 0x80);
        }
    }

    @Test
    void leavesOfAWebmItsFramesAloneAtTheirPlaces() throws ClipNotUnderstood {
        var before = TestClips.webm(WORD);
        assertThat(text(before).split(WORD, -1)).as("planted").hasSizeGreaterThan(10);
        var after = before.clone();
        SilentWebm.strip(after);
        assertThat(text(after)).doesNotContain(WORD, "A_OPUS").contains("V_VP8");
        assertThat(text(after).indexOf(text(TestClips.FRAME)))
                .isEqualTo(text(before).indexOf(text(TestClips.FRAME)));
        assertThat(after).hasSameSizeAs(before);
        var again = after.clone();
        SilentWebm.strip(again);
        assertThat(again).as("what is stripped stays as it is").isEqualTo(after);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 20, 40, 60, 200, 400})
    void refusesAFileThatEndsTooSoon(int bytes) {
        assertThatThrownBy(() -> SilentMp4.strip(Arrays.copyOf(TestClips.mp4(WORD), bytes)))
                .isInstanceOf(ClipNotUnderstood.class);
        assertThatThrownBy(() -> SilentWebm.strip(Arrays.copyOf(TestClips.webm(WORD), bytes)))
                .isInstanceOf(ClipNotUnderstood.class);
    }

    @Test
    void refusesWhatHoldsNoPicture() {
        assertThatThrownBy(() -> SilentMp4.strip("no clip at all".getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(ClipNotUnderstood.class);
        assertThatThrownBy(() -> SilentWebm.strip(new byte[0])).isInstanceOf(ClipNotUnderstood.class);
    }
}
