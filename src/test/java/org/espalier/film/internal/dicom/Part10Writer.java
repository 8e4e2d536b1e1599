package org.espalier.film.internal.dicom;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.Deflater;

/** Writes small DICOM files in explicit little endian, so that tests can say each byte. */
final class Part10Writer {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    Part10Writer text(Tag tag, String vr, String value) {
        return text(tag, vr, value, StandardCharsets.US_ASCII);
    }

    Part10Writer text(Tag tag, String vr, String value, Charset charset) {
        byte[] content = value.getBytes(charset);
        byte[] padded = Arrays.copyOf(content, content.length + content.length % 2);
        if (padded.length > content.length) {
            padded[content.length] = (byte) (vr.equals("UI") ? 0 : ' ');
        }
        return bytes(tag, vr, padded);
    }

    Part10Writer shorts(Tag tag, String vr, int... values) {
        ByteBuffer content = little(2 * values.length);
        for (int value : values) {
            content.putShort((short) value);
        }
        return bytes(tag, vr, content.array());
    }

    Part10Writer bytes(Tag tag, String vr, byte[] value) {
        header(tag, vr, value.length);
        bytes.writeBytes(value);
        return this;
    }

    /** A sequence whose items and itself have no length. */
    Part10Writer sequence(Tag tag, Part10Writer... items) {
        header(tag, "SQ", -1);
        for (Part10Writer item : items) {
            delimiter(Tag.ITEM, -1);
            bytes.writeBytes(item.bytes.toByteArray());
            delimiter(Tag.ITEM_END, 0);
        }
        delimiter(Tag.SEQUENCE_END, 0);
        return this;
    }

    /** Encapsulated pixel data with an offset table. */
    Part10Writer fragments(int[] offsets, List<byte[]> fragments) {
        header(Tag.PIXEL_DATA, "OB", -1);
        delimiter(Tag.ITEM, 4 * offsets.length);
        ByteBuffer table = little(4 * offsets.length);
        for (int offset : offsets) {
            table.putInt(offset);
        }
        bytes.writeBytes(table.array());
        for (byte[] fragment : fragments) {
            delimiter(Tag.ITEM, fragment.length);
            bytes.writeBytes(fragment);
        }
        delimiter(Tag.SEQUENCE_END, 0);
        return this;
    }

    /** The description of a grey picture. */
    static Part10Writer grey(int columns, int rows, int allocated, int stored, boolean signed) {
        return new Part10Writer()
                .shorts(Tag.SAMPLES_PER_PIXEL, "US", 1)
                .text(Tag.PHOTOMETRIC_INTERPRETATION, "CS", "MONOCHROME2")
                .shorts(Tag.ROWS, "US", rows)
                .shorts(Tag.COLUMNS, "US", columns)
                .shorts(Tag.BITS_ALLOCATED, "US", allocated)
                .shorts(Tag.BITS_STORED, "US", stored)
                .shorts(Tag.HIGH_BIT, "US", stored - 1)
                .shorts(Tag.PIXEL_REPRESENTATION, "US", signed ? 1 : 0);
    }

    /** The whole file. */
    ByteBuffer file(TransferSyntax syntax) {
        byte[] content = bytes.toByteArray();
        Part10Writer whole = new Part10Writer();
        whole.bytes.writeBytes(new byte[128]);
        whole.bytes.writeBytes("DICM".getBytes(StandardCharsets.US_ASCII));
        whole.text(Tag.TRANSFER_SYNTAX_UID, "UI", syntax.uid());
        whole.bytes.writeBytes(syntax == TransferSyntax.DEFLATED_EXPLICIT_LITTLE_ENDIAN ? deflate(content) : content);
        return ByteBuffer.wrap(whole.bytes.toByteArray());
    }

    /** The data set of a file read back. */
    DataSet read() {
        return Films.good(DicomReader.read(file(TransferSyntax.EXPLICIT_LITTLE_ENDIAN), Limits.STANDARD))
                .dataSet();
    }

    private void header(Tag tag, String vr, int length) {
        boolean isLong = Vr.valueOf(vr).hasLongLength();
        ByteBuffer header = little(isLong ? 12 : 8)
                .putShort((short) tag.group())
                .putShort((short) tag.element())
                .put(vr.getBytes(StandardCharsets.US_ASCII));
        bytes.writeBytes(
                isLong
                        ? header.putShort((short) 0).putInt(length).array()
                        : header.putShort((short) length).array());
    }

    private void delimiter(Tag tag, int length) {
        bytes.writeBytes(little(8)
                .putShort((short) tag.group())
                .putShort((short) tag.element())
                .putInt(length)
                .array());
    }

    private static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }

    private static byte[] deflate(byte[] content) {
        try (Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION, true)) {
            deflater.setInput(content);
            deflater.finish();
            ByteArrayOutputStream deflated = new ByteArrayOutputStream();
            byte[] step = new byte[8192];
            while (!deflater.finished()) {
                deflated.write(step, 0, deflater.deflate(step));
            }
            return deflated.toByteArray();
        }
    }
}
