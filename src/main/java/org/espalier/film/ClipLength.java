package org.espalier.film;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.mp4.Mp4Directory;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;

/**
 * How long a clip lasts, by its own containers' clocks, without decoding a picture. Of a WebM (RFC 9559) the stated
 * duration or the time of the last block, whichever is later: browsers that record leave the duration out.
 */
final class ClipLength {

    private static final int SEGMENT = 0x18538067;
    private static final int INFO = 0x1549A966;
    private static final int CLUSTER = 0x1F43B675;
    private static final int BLOCK_GROUP = 0xA0;
    private static final int TIMESTAMP_SCALE = 0x2AD7B1;
    private static final int DURATION = 0x4489;
    private static final int CLUSTER_TIMESTAMP = 0xE7;
    private static final int SIMPLE_BLOCK = 0xA3;
    private static final int BLOCK = 0xA1;
    private static final long DEFAULT_SCALE_NS = 1_000_000;
    private static final int LONGEST_NUMBER = 8;

    private final DataInputStream in;
    private long scale = DEFAULT_SCALE_NS;
    private double stated;
    private long cluster;
    private long last;

    private ClipLength(DataInputStream in) {
        this.in = in;
    }

    /** The length; empty when the file does not tell. */
    static Optional<Duration> of(PictureKind kind, Path file) throws IOException {
        return (kind == PictureKind.MP4 ? ofMp4(file) : ofWebm(file)).filter(Duration::isPositive);
    }

    private static Optional<Duration> ofMp4(Path file) throws IOException {
        try {
            var movie = ImageMetadataReader.readMetadata(file.toFile()).getFirstDirectoryOfType(Mp4Directory.class);
            if (movie == null || !movie.containsTag(Mp4Directory.TAG_DURATION)) {
                return Optional.empty();
            }
            long scale = movie.getLong(Mp4Directory.TAG_TIME_SCALE);
            double seconds = (double) movie.getLong(Mp4Directory.TAG_DURATION) / scale;
            return ofSeconds(seconds);
        } catch (ImageProcessingException | MetadataException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<Duration> ofWebm(Path file) throws IOException {
        try (var in = new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
            return new ClipLength(in).walk();
        }
    }

    private static Optional<Duration> ofSeconds(double seconds) {
        return Double.isFinite(seconds) && seconds >= 0 && seconds < Integer.MAX_VALUE
                ? Optional.of(Duration.ofMillis(Math.round(seconds * 1000)))
                : Optional.empty();
    }

    /**
     * Goes through the elements in the order of the file; those that hold others are entered, all else is passed over.
     */
    private Optional<Duration> walk() throws IOException {
        for (int id = readId(); id >= 0; id = readId()) {
            long size = readSize();
            switch (id) {
                case SEGMENT, INFO, CLUSTER, BLOCK_GROUP -> {}
                case TIMESTAMP_SCALE -> scale = Math.max(1, readNumber(size));
                case DURATION -> stated = size == Float.BYTES ? in.readFloat() : in.readDouble();
                case CLUSTER_TIMESTAMP -> cluster = readNumber(size);
                case SIMPLE_BLOCK, BLOCK -> readBlock(size);
                default -> skip(size);
            }
        }
        return ofSeconds(Math.max(stated, last) * scale / 1e9);
    }

    /** A block begins with its track and its time after its cluster's. */
    private void readBlock(long size) throws IOException {
        long track = readSize();
        long time = cluster + in.readShort();
        last = Math.max(last, time);
        skip(size - Short.BYTES - lengthOf(track));
    }

    private static int lengthOf(long track) {
        int bytes = 1;
        while (track >= (1L << 7 * bytes) - 1) {
            bytes++;
        }
        return bytes;
    }

    /** The id of the next element with its marker bit; −1 at the end of the file. */
    private int readId() throws IOException {
        int first = in.read();
        if (first < 0) {
            return -1;
        }
        int more = Integer.numberOfLeadingZeros(first) - 24;
        if (more > 3) {
            throw new IOException("no element begins with " + first);
        }
        int id = first;
        for (int i = 0; i < more; i++) {
            id = id << 8 | in.readUnsignedByte();
        }
        return id;
    }

    /** A size without its marker bit; all ones, for unknown, are as large as can be. */
    private long readSize() throws IOException {
        int first = in.readUnsignedByte();
        int more = Integer.numberOfLeadingZeros(first) - 24;
        if (more > LONGEST_NUMBER - 1) {
            throw new IOException("no size begins with " + first);
        }
        long size = first & (0x7F >> more);
        for (int i = 0; i < more; i++) {
            size = size << 8 | in.readUnsignedByte();
        }
        return size;
    }

    private long readNumber(long size) throws IOException {
        if (size > LONGEST_NUMBER) {
            throw new IOException("a number of " + size + " bytes");
        }
        long number = 0;
        for (int i = 0; i < size; i++) {
            number = number << 8 | in.readUnsignedByte();
        }
        return number;
    }

    private void skip(long size) throws IOException {
        if (size < 0) {
            throw new IOException("an element shorter than its head");
        }
        in.skipNBytes(size);
    }
}
