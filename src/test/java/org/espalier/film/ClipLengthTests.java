package org.espalier.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.espalier.film.TestPictures.UNKNOWN;
import static org.espalier.film.TestPictures.bytes;
import static org.espalier.film.TestPictures.joined;
import static org.espalier.film.TestPictures.text;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Containers by the book: ISO/IEC 14496-12 for MP4, RFC 8794 and RFC 9559 for WebM. */
class ClipLengthTests {

    /** Segment, of unknown size. */
    private static final byte[] SEGMENT = joined(bytes(0x18, 0x53, 0x80, 0x67), bytes(UNKNOWN));

    /** Cluster, of unknown size. */
    private static final byte[] CLUSTER = joined(bytes(0x1F, 0x43, 0xB6, 0x75), bytes(UNKNOWN));

    @TempDir
    Path folder;

    @Test
    void readsTheMovieHeaderOfAnMp4() throws IOException {
        assertThat(length(PictureKind.MP4, TestPictures.mp4(600, 7_500))).contains(Duration.ofMillis(12_500));
        assertThat(length(PictureKind.MP4, TestPictures.mp4(600, 0))).isEmpty();
        assertThat(length(PictureKind.MP4, TestPictures.mp4(0, 600))).isEmpty();
    }

    @Test
    void readsTheStatedDurationOfAWebm() throws IOException {
        var info = joined(
                bytes(0x15, 0x49, 0xA9, 0x66, 0x92, 0x2A, 0xD7, 0xB1, 0x83, 0x0F, 0x42, 0x40, 0x44, 0x89, 0x88),
                doubled(8_250));
        assertThat(length(PictureKind.WEBM, joined(TestPictures.webmHead(), SEGMENT, info)))
                .contains(Duration.ofMillis(8_250));
    }

    @Test
    void readsTheTimeOfTheLastBlockOfAWebmThatStatesNone() throws IOException {
        var first = joined(CLUSTER, bytes(0xE7, 0x81, 0x00), block(0), block(40));
        var second = joined(CLUSTER, bytes(0xE7, 0x82, 0x13, 0x88), block(120));
        assertThat(length(PictureKind.WEBM, joined(TestPictures.webmHead(), SEGMENT, first, second)))
                .contains(Duration.ofMillis(5_120));
    }

    @Test
    void tellsNothingOfAWebmWithoutAClock() throws IOException {
        assertThat(length(PictureKind.WEBM, joined(TestPictures.webmHead(), SEGMENT)))
                .isEmpty();
    }

    /** A size beyond the file, an id that is none, a number of nine bytes, a block shorter than its head. */
    @ParameterizedTest
    @ValueSource(strings = {"EC 8F 00", "00 81", "2A D7 B1 89 00 00 00 00 00 00 00 00 00", "A3 81 81 00 00 00"})
    void stopsAtAMalformedElement(String hex) throws IOException {
        var broken = bytes(java.util.Arrays.stream(hex.split(" "))
                .mapToInt(one -> Integer.parseInt(one, 16))
                .toArray());
        var file = file(joined(TestPictures.webmHead(), SEGMENT, broken));
        assertThatThrownBy(() -> ClipLength.of(PictureKind.WEBM, file)).isInstanceOf(IOException.class);
    }

    @Test
    void tellsTheKindByTheFirstBytesAlone() {
        assertThat(PictureKind.of(TestPictures.mp4(1, 1))).contains(PictureKind.MP4);
        assertThat(PictureKind.of(TestPictures.webmHead())).contains(PictureKind.WEBM);
        assertThat(PictureKind.of(TestPictures.photo(2, 2, "png"))).contains(PictureKind.PNG);
        assertThat(PictureKind.of(TestPictures.photo(2, 2, "jpeg"))).contains(PictureKind.JPEG);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"<svg xmlns='http://www.w3.org/2000/svg'/>", "<!doctype html><script>", "ftyp", "GIF89a", "%PDF"
            })
    void refusesEverythingElse(String start) {
        assertThat(PictureKind.of(text(start))).isEmpty();
    }

    /** Containers of the same families that browsers do not all show: a QuickTime film, a still, a Matroska. */
    @ParameterizedTest
    @ValueSource(strings = {"????ftypqt  ", "????ftypheic", "\u001AE\u00DF\u00A3?B??matroska"})
    void refusesContainersThatBrowsersDoNotAllShow(String start) {
        assertThat(PictureKind.of(start.getBytes(StandardCharsets.ISO_8859_1))).isEmpty();
    }

    private static byte[] block(int time) {
        return bytes(0xA3, 0x85, 0x81, time >> 8, time & 0xFF, 0x80, 0x00);
    }

    private static byte[] doubled(double value) {
        return java.nio.ByteBuffer.allocate(Double.BYTES).putDouble(value).array();
    }

    private Optional<Duration> length(PictureKind kind, byte[] content) throws IOException {
        return ClipLength.of(kind, file(content));
    }

    private Path file(byte[] content) throws IOException {
        return Files.write(folder.resolve("clip"), content);
    }
}
