package org.espalier.film;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.espalier.platform.BlobRef;
import org.espalier.platform.Blobs;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;
import org.springframework.util.StreamUtils;

/** Lets photos and clips in: told by their content, within the limits, on the disk before anything is said of them. */
@Component
class PictureDoor {

    private static final Logger LOG = LoggerFactory.getLogger(PictureDoor.class);

    private final Blobs blobs;
    private final PictureProperties limits;

    PictureDoor(Blobs blobs, PictureProperties limits) {
        this.blobs = blobs;
        this.limits = limits;
    }

    /** What came of the bytes. */
    sealed interface Entered {

        record In(PictureKind kind, BlobRef bytes, Optional<Duration> length) implements Entered {}

        record Out(PictureProblem problem) implements Entered {}
    }

    Entered enter(InputStream bytes) {
        try {
            var start = bytes.readNBytes(PictureKind.TELLING_BYTES);
            if (start.length == 0) {
                return new Entered.Out(PictureProblem.EMPTY);
            }
            var kind = PictureKind.of(start);
            return kind.isEmpty()
                    ? new Entered.Out(PictureProblem.NOT_A_PICTURE)
                    : keep(kind.get(), new SequenceInputStream(new ByteArrayInputStream(start), bytes));
        } catch (Blobs.Infected e) {
            return new Entered.Out(PictureProblem.MALICIOUS);
        } catch (Blobs.DiskFull e) {
            return new Entered.Out(PictureProblem.DISK_FULL);
        } catch (IOException e) {
            LOG.warn("A photo or clip could not be stored", e);
            return new Entered.Out(PictureProblem.NOT_STORED);
        }
    }

    Path file(BlobRef bytes) {
        return blobs.path(bytes);
    }

    /** What is refused lies in a passing file alone and is gone with it. */
    private Entered keep(PictureKind kind, InputStream bytes) throws IOException {
        var passing = Files.createTempFile("picture", null);
        try {
            long most = limits.largestFile().toBytes();
            if (copy(bytes, passing, most) > most) {
                return new Entered.Out(PictureProblem.TOO_LARGE);
            }
            return kind.isClip() ? keepClip(kind, passing) : keepPhoto(kind, passing);
        } finally {
            Files.deleteIfExists(passing);
        }
    }

    private static long copy(InputStream bytes, Path file, long most) throws IOException {
        try (var out = Files.newOutputStream(file)) {
            return StreamUtils.copyRange(bytes, out, 0, most);
        }
    }

    private Entered keepPhoto(PictureKind kind, Path file) throws IOException {
        return Photos.shortcoming(file, limits.photoPixels()).isPresent()
                ? new Entered.Out(PictureProblem.BROKEN)
                : new Entered.In(kind, put(file), Optional.empty());
    }

    private Entered keepClip(PictureKind kind, Path file) throws IOException {
        var length = length(kind, file);
        if (length.isEmpty()) {
            return new Entered.Out(PictureProblem.LENGTH_UNKNOWN);
        }
        return length.get().compareTo(limits.longestClip()) > 0
                ? new Entered.Out(PictureProblem.TOO_LONG)
                : new Entered.In(kind, put(file), length);
    }

    private BlobRef put(Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return blobs.put(in, limits.largestFile().toBytes());
        }
    }

    private static Optional<Duration> length(PictureKind kind, Path file) {
        try {
            return ClipLength.of(kind, file);
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
