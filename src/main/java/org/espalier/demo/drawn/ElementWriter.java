package org.espalier.demo.drawn;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * DICOM data elements in explicit little endian, to be given in rising order of tag.
 *
 * <p>Source: PS3.5, 7.1.2 (explicit VR) and 6.2 (padding), from memory; read back by independent programs in the tests.
 */
final class ElementWriter {

    private static final Set<String> LONG_LENGTH = Set.of("OB", "OW");

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private long last = -1;

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
        if (Integer.toUnsignedLong(tag) <= last) {
            throw new IllegalArgumentException("elements must come in rising order: " + Integer.toHexString(tag));
        }
        last = Integer.toUnsignedLong(tag);
        ByteBuffer head = little(LONG_LENGTH.contains(vr) ? 12 : 8);
        head.putShort((short) (tag >>> 16)).putShort((short) tag);
        head.put(vr.getBytes(StandardCharsets.US_ASCII));
        if (LONG_LENGTH.contains(vr)) {
            head.putShort((short) 0).putInt(value.length);
        } else {
            head.putShort((short) value.length);
        }
        bytes.writeBytes(head.array());
        bytes.writeBytes(value);
    }

    private static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
