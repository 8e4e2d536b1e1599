package org.espalier.film.internal.dicom;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileChannel.MapMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * Reads DICOM files (PS3.10 section 7). Values stay in the mapped file until somebody asks for them, so a film of any
 * size costs little to read. A file is read to its last byte or refused; there is no half result.
 */
public final class DicomReader {

    private static final int PREAMBLE = 128;
    private static final int META_GROUP = 0x0002;

    private DicomReader() {}

    /** Reads a file. Its content must not change afterwards: the result looks into it. */
    public static ReadResult read(Path file, Limits limits) {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            if (channel.size() > limits.fileBytes()) {
                return new ReadResult.Refused(
                        Refusal.FILE_TOO_LARGE, channel.size() + " bytes, at most " + limits.fileBytes());
            }
            return read(channel.map(MapMode.READ_ONLY, 0, channel.size()), limits);
        } catch (IOException e) {
            return new ReadResult.Refused(Refusal.UNREADABLE, "the stored file cannot be opened");
        }
    }

    /** Reads the remaining bytes of a buffer, which must not change afterwards. */
    public static ReadResult read(ByteBuffer bytes, Limits limits) {
        try {
            return new ReadResult.Read(file(bytes.slice().asReadOnlyBuffer(), limits));
        } catch (RefusedException e) {
            return new ReadResult.Refused(e.reason(), e.detail());
        }
    }

    private static DicomFile file(ByteBuffer bytes, Limits limits) throws RefusedException {
        if (!hasPrefix(bytes)) {
            throw new RefusedException(Refusal.NOT_DICOM, "no DICM after the first 128 bytes");
        }
        Cursor cursor = new Cursor(bytes.position(PREAMBLE + 4), limits);
        DataSet meta = new DataSetParser(cursor, TransferSyntax.Encoding.META, limits).group(META_GROUP);
        TransferSyntax syntax = transferSyntax(meta);
        if (syntax == TransferSyntax.DEFLATED_EXPLICIT_LITTLE_ENDIAN) {
            cursor = new Cursor(inflate(bytes.slice(), limits.inflatedBytes()), limits);
        }
        DataSet dataSet = new DataSetParser(cursor, syntax.encoding(), limits).toEnd();
        return new DicomFile(meta, dataSet, syntax);
    }

    private static boolean hasPrefix(ByteBuffer bytes) {
        byte[] prefix = "DICM".getBytes(StandardCharsets.US_ASCII);
        return bytes.remaining() >= PREAMBLE + prefix.length
                && bytes.slice(PREAMBLE, prefix.length).equals(ByteBuffer.wrap(prefix));
    }

    private static TransferSyntax transferSyntax(DataSet meta) throws RefusedException {
        Optional<String> uid = meta.string(Tag.TRANSFER_SYNTAX_UID);
        if (uid.isEmpty()) {
            throw new RefusedException(Refusal.TRANSFER_SYNTAX_MISSING, "no transfer syntax in the file header");
        }
        return TransferSyntax.of(uid.get())
                .orElseThrow(() -> new RefusedException(
                        Refusal.TRANSFER_SYNTAX_UNSUPPORTED, "transfer syntax " + abridged(uid.get())));
    }

    private static String abridged(String uid) {
        return uid.substring(0, Math.min(uid.length(), 64));
    }

    /** Inflates twice, first to count: memory is taken once, for the bytes that really come. */
    private static ByteBuffer inflate(ByteBuffer deflated, int limit) throws RefusedException {
        byte[] scratch = new byte[1 << 16];
        Inflater inflater = new Inflater(true);
        try {
            int size = countInflated(inflater, deflated.duplicate(), scratch, limit);
            byte[] inflated = new byte[size];
            inflater.reset();
            inflater.setInput(deflated);
            for (int filled = 0; filled < size; ) {
                filled += inflater.inflate(inflated, filled, size - filled);
            }
            return ByteBuffer.wrap(inflated).asReadOnlyBuffer();
        } catch (DataFormatException e) {
            throw new RefusedException(Refusal.MALFORMED, "the compressed data set is broken");
        } finally {
            inflater.end();
        }
    }

    private static int countInflated(Inflater inflater, ByteBuffer deflated, byte[] scratch, int limit)
            throws RefusedException, DataFormatException {
        inflater.setInput(deflated);
        long size = 0;
        while (!inflater.finished()) {
            int step = inflater.inflate(scratch);
            size += step;
            if (size > limit) {
                throw new RefusedException(
                        Refusal.INFLATES_TOO_FAR, "the data set inflates to more than " + limit + " bytes");
            }
            if (step == 0 && !inflater.finished()) {
                throw new RefusedException(Refusal.TRUNCATED, "the compressed data set has no end");
            }
        }
        return (int) size;
    }
}
