package org.espalier.film.internal.dicom;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.UUID;

/**
 * Writes elements in explicit little endian in rising order of tag (PS3.5 section 7.1.2), and refuses each that the
 * confidentiality profile takes out.
 */
final class DeidentifiedWriter {

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private int last;

    /** A UID that was never used before (PS3.5 annex B.2). */
    static String newUid() {
        return "2.25." + new BigInteger(UUID.randomUUID().toString().replace("-", ""), 16);
    }

    /** Text the program itself made; padded to even length. */
    DeidentifiedWriter text(Tag tag, Vr vr, String value) {
        byte[] raw = value.getBytes(StandardCharsets.US_ASCII);
        byte[] padded = Arrays.copyOf(raw, raw.length + raw.length % 2);
        if (padded.length > raw.length) {
            padded[raw.length] = (byte) (vr == Vr.UI ? 0 : ' ');
        }
        return bytes(tag, vr, padded);
    }

    DeidentifiedWriter empty(Tag tag, Vr vr) {
        return bytes(tag, vr, new byte[0]);
    }

    DeidentifiedWriter shorts(Tag tag, Vr vr, int... values) {
        ByteBuffer content = little(2 * values.length);
        for (int value : values) {
            content.putShort((short) value);
        }
        return bytes(tag, vr, content.array());
    }

    DeidentifiedWriter words(Tag tag, short[] values) {
        ByteBuffer content = little(2 * values.length);
        content.asShortBuffer().put(values);
        return bytes(tag, Vr.OW, content.array());
    }

    DeidentifiedWriter bytes(Tag tag, Vr vr, byte[] value) {
        demand(tag, value.length);
        header(tag, vr, value.length);
        bytes.writeBytes(value);
        return this;
    }

    /** A sequence of these items, with lengths. */
    DeidentifiedWriter sequence(Tag tag, DeidentifiedWriter... items) {
        ByteArrayOutputStream content = new ByteArrayOutputStream();
        for (DeidentifiedWriter item : items) {
            content.writeBytes(little(8)
                    .putShort((short) Tag.ITEM.group())
                    .putShort((short) Tag.ITEM.element())
                    .putInt(item.bytes.size())
                    .array());
            content.writeBytes(item.bytes.toByteArray());
        }
        return bytes(tag, Vr.SQ, content.toByteArray());
    }

    byte[] toBytes() {
        return bytes.toByteArray();
    }

    private void demand(Tag tag, int length) {
        if (!ConfidentialityProfile.allows(tag, length)) {
            throw new IllegalArgumentException("the profile takes out " + tag);
        }
        if (Integer.compareUnsigned(tag.value(), last) <= 0) {
            throw new IllegalArgumentException("elements stand in rising order; " + tag + " comes late");
        }
        last = tag.value();
    }

    private void header(Tag tag, Vr vr, int length) {
        ByteBuffer header = little(vr.hasLongLength() ? 12 : 8)
                .putShort((short) tag.group())
                .putShort((short) tag.element())
                .put(vr.name().getBytes(StandardCharsets.US_ASCII));
        bytes.writeBytes(
                vr.hasLongLength()
                        ? header.putShort((short) 0).putInt(length).array()
                        : header.putShort((short) length).array());
    }

    private static ByteBuffer little(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
