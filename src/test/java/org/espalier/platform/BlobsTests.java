package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BlobsTests {

    /** SHA-256 of "abc", FIPS 180-4 example. */
    private static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2024-06-02T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Blobs blobs;

    @BeforeEach
    void open() throws IOException {
        blobs = new Blobs(folder, CLOCK);
    }

    @Test
    void namesBytesByTheirHash() throws IOException {
        var ref = blobs.put(bytes("abc"), 3);
        assertThat(ref).isEqualTo(new BlobRef(ABC, 3));
        assertThat(blobs.open(ref)).hasContent("abc");
    }

    @Test
    void keepsTheSameBytesOnce() throws IOException {
        assertThat(blobs.put(bytes("abc"), 3)).isEqualTo(blobs.put(bytes("abc"), 3));
        assertThat(files()).isOne();
    }

    @Test
    void refusesMoreThanTheLimitAndLeavesNothing() {
        assertThatThrownBy(() -> blobs.put(bytes("abcd"), 3)).isInstanceOf(Blobs.TooLarge.class);
        assertThat(files()).isZero();
    }

    @Test
    void leavesNothingOfAStreamThatBreaks() {
        var broken = new SequenceInputStream(bytes("abc"), new InputStream() {
            @Override
            public int read() throws IOException {
                throw new IOException("the sender hung up");
            }
        });
        assertThatThrownBy(() -> blobs.put(broken, 100)).hasMessage("the sender hung up");
        assertThat(files()).isZero();
    }

    @Test
    void refusesANameThatIsNoHash() {
        assertThatThrownBy(() -> new BlobRef("../../etc/passwd", 1)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void forgetsWhatADeadProcessWasReceivingADayAgo() throws IOException {
        var old = arrival("old", "2024-06-01T11:59:59Z");
        var young = arrival("young", "2024-06-01T12:00:01Z");
        new Blobs(folder, CLOCK);
        assertThat(old).doesNotExist();
        assertThat(young).exists();
    }

    private Path arrival(String name, String at) throws IOException {
        var file = Files.createFile(folder.resolve("arriving").resolve(name));
        return Files.setLastModifiedTime(file, FileTime.from(Instant.parse(at)));
    }

    private long files() {
        try (var found = Files.walk(folder)) {
            return found.filter(Files::isRegularFile).count();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }
}
