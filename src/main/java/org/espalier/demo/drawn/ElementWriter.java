package org.espalier.demo.drawn;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * DICOM data elements in little endian, to be given in rising order of tag.
 *
 * <p>Source: PS3.5, 7.1.2 (explicit VR), 7.1.3 (implicit VR), 6.2 (padding) and A.4 (encapsulated pixels), from memory;
 * read back by independent programs in the tests.
 */
final class ElementWriter {

    private static final Set<String> LONG_LENGTH = Set.of("OB", "OW");
    private static final int UNDEFINED_LENGTH = -1;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final boolean explicit;
    private long last = -1;

    ElementWriter(boolean explicit) {
        this.explicit = explicit;
    }

    int size() {
        return bytes.size();
    }

    void writeTo(OutputStream out) throws IOException {
        bytes.writeTo(out);
    }

    /** Text, padded to even length as its kind asks. */
    void text(int tag, String vr, String value) {
        byte[] raw = value.getBytes(StandardCharsets.UTF_8);
        byte[] even = new byte[raw.length + raw.length % 2];
        System.arraycopy(raw, 0, even, 0, raw.length);
        if (even.length > raw.length) {
            even[raw.length] = (byte) (vr.equals("UI") ? 0 : ' ');
        }
        bytes(tag, vr, even);
    }

    void uint16(int tag, int value) {
        bytes(tag, "US", little(2).putShort((short) value).array());
    }

    void uint32(int tag, int value) {
        bytes(tag, "UL", little(4).putInt(value).array());
    }

    void words(int tag, short[] values) {
        ByteBuffer buffer = little(values.length * 2);
        buffer.asShortBuffer().put(values);
        bytes(tag, "OW", buffer.array());
    }

    void bytes(int tag, String vr, byte[] value) {
        head(tag, vr, value.length);
        bytes.writeBytes(value);
    }

    /** Coded pixels of one frame: an empty table of offsets, the frame, the end. */
    void encapsulated(int tag, byte[] frame) {
        head(tag, "OB", UNDEFINED_LENGTH);
        item(0xE000, new byte[0]);
        item(0xE000, frame);
        item(0xE0DD, new byte[0]);
    }

    private void item(int element, byte[] value) {
        bytes.writeBytes(little(8)
                .putShort((short) 0xFFFE)
                .putShort((short) element)
                .putInt(value.length)
                .array());
        bytes.writeBytes(value);
    }

    private void head(int tag, String vr, int length) {
        if (Integer.toUnsignedLong(tag) <= last) {
            throw new IllegalArgumentException("elements must come in rising order: " + Integer.toHexString(tag));
        }
        last = Integer.toUnsignedLong(tag);
        boolean wide = explicit && LONG_LENGTH.contains(vr);
        ByteBuffer head = little(wide ? 12 : 8);
        head.putShort((short) (tag >>> 16)).putShort((short) tag);
        if (explicit) {
            head.put(vr.getBytes(StandardCharsets.US_ASCII));
        }
        if (wide) {
            head.putShort((short) 0);
        }
        if (wide || !explicit) {
            head.putInt(length);
        } else {
            head.putShort((short) length);
        }
        bytes.writeBytes(head.array());
    }

    private static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
