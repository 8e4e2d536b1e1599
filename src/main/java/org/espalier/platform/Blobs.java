package org.espalier.platform;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.security.DigestInputStream;
import java.time.Clock;
import java.time.Duration;
import java.util.HexFormat;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.stereotype.Component;

/**
 * The film folder: bytes kept under the name of their own hash. What {@link #put} returned is on the disk, whole,
 * whatever happens next; the same bytes are kept once.
 */
@Component
public class Blobs {

    private static final long SPARE_BYTES = 256L << 20;

    private final Path root;
    private final Path arriving;
    private final @Nullable FileScanner scanner;

    @Autowired
    Blobs(PlatformProperties properties, Clock clock) throws IOException {
        this(properties.folder().films(), properties.scannerOrNull(), clock);
    }

    Blobs(Path folder, Clock clock) throws IOException {
        this(folder, null, clock);
    }

    Blobs(Path folder, @Nullable FileScanner scanner, Clock clock) throws IOException {
        this.scanner = scanner;
        root = Files.createDirectories(folder.toAbsolutePath());
        arriving = Files.createDirectories(root.resolve("arriving"));
        forgetCutOffArrivals(clock);
    }

    /** What a process that died was still receiving, and nobody was told of. Another node's arrivals are younger. */
    private void forgetCutOffArrivals(Clock clock) throws IOException {
        var dayAgo = FileTime.from(clock.instant().minus(Duration.ofDays(1)));
        try (var files = Files.newDirectoryStream(
                arriving, file -> Files.getLastModifiedTime(file).compareTo(dayAgo) < 0)) {
            for (var file : files) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** Thrown when the bytes are more than the limit. */
    public static final class TooLarge extends IOException {
        private static final long serialVersionUID = 1;

        TooLarge(long limit) {
            super("more than " + limit + " bytes");
        }
    }

    /** Thrown before anything is acknowledged when the disk has no room left. */
    public static final class DiskFull extends IOException {
        private static final long serialVersionUID = 1;

        DiskFull(long free) {
            super("only " + free + " bytes free");
        }
    }

    /** Thrown when the hospital's scanner found something malicious in the bytes; they are gone. */
    public static final class Infected extends IOException {
        private static final long serialVersionUID = 1;

        Infected() {
            super("the scanner found something");
        }
    }

    /** Keeps the bytes of the stream; they are on the disk when this returns. */
    public BlobRef put(InputStream bytes, long limit) throws IOException {
        refuseWhenFull();
        var file = arriving.resolve(UUID.randomUUID().toString());
        try {
            var ref = copy(bytes, file, limit);
            if (scanner != null && scanner.findsIn(file)) {
                throw new Infected();
            }
            settle(file, ref);
            return ref;
        } finally {
            Files.deleteIfExists(file);
        }
    }

    /** The file that holds the bytes. */
    public Path path(BlobRef ref) {
        return shelf(ref).resolve(ref.sha256());
    }

    private Path shelf(BlobRef ref) {
        return root.resolve(ref.sha256().substring(0, 2));
    }

    public InputStream open(BlobRef ref) throws IOException {
        return Files.newInputStream(path(ref));
    }

    void refuseWhenFull() throws IOException {
        long free = Files.getFileStore(root).getUsableSpace();
        if (free < SPARE_BYTES) {
            throw new DiskFull(free);
        }
    }

    private static BlobRef copy(InputStream bytes, Path file, long limit) throws IOException {
        var digest = Hashes.sha256();
        try (var channel = FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            var limited = new DigestInputStream(new Limited(bytes, limit), digest);
            long size = limited.transferTo(Channels.newOutputStream(channel));
            channel.force(true);
            return new BlobRef(HexFormat.of().formatHex(digest.digest()), size);
        }
    }

    private void settle(Path file, BlobRef ref) throws IOException {
        var shelf = Files.createDirectories(shelf(ref));
        Files.move(file, path(ref), StandardCopyOption.ATOMIC_MOVE);
        force(shelf);
        force(root);
    }

    /** Makes the renaming itself durable. */
    private static void force(Path folder) throws IOException {
        try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }

    private static final class Limited extends FilterInputStream {

        private final long limit;
        private long seen;

        Limited(InputStream in, long limit) {
            super(in);
            this.limit = limit;
        }

        @Override
        public int read() throws IOException {
            int value = super.read();
            count(value < 0 ? 0 : 1);
            return value;
        }

        @Override
        public int read(byte[] buffer, int offset, int length) throws IOException {
            int count = super.read(buffer, offset, length);
            count(Math.max(0, count));
            return count;
        }

        private void count(int bytes) throws IOException {
            seen += bytes;
            if (seen > limit) {
                throw new TooLarge(limit);
            }
        }
    }
}
