package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** A place in the bytes of a file. Every step is checked against the bytes that are there and counted. */
final class Cursor {

    private final ByteBuffer bytes;
    private final int elementLimit;
    private int elements;

    /** Starts at the position of the buffer, which is used up. */
    Cursor(ByteBuffer bytes, Limits limits) {
        this.bytes = bytes;
        this.elementLimit = limits.elements();
    }

    int position() {
        return bytes.position();
    }

    void moveTo(int position) {
        bytes.position(position);
    }

    int limit() {
        return bytes.limit();
    }

    /** Counts one element or item more. */
    void count() throws RefusedException {
        if (++elements > elementLimit) {
            throw new RefusedException(Refusal.TOO_MANY_ELEMENTS, "more than " + elementLimit + " elements");
        }
    }

    int unsignedByte() throws RefusedException {
        need(1, "a byte");
        return Byte.toUnsignedInt(bytes.get());
    }

    int unsignedShort(ByteOrder order) throws RefusedException {
        need(2, "a 16-bit number");
        return Short.toUnsignedInt(bytes.order(order).getShort());
    }

    long unsignedInt(ByteOrder order) throws RefusedException {
        need(4, "a 32-bit number");
        return Integer.toUnsignedLong(bytes.order(order).getInt());
    }

    Tag tag(ByteOrder order) throws RefusedException {
        int group = unsignedShort(order);
        return new Tag(group << 16 | unsignedShort(order));
    }

    /** A view of the next bytes, which are passed over. */
    ByteBuffer slice(long length, ByteOrder order, Object what) throws RefusedException {
        need(length, what);
        ByteBuffer slice = bytes.slice(bytes.position(), (int) length).order(order);
        bytes.position(bytes.position() + (int) length);
        return slice;
    }

    void need(long length, Object what) throws RefusedException {
        if (length > bytes.remaining()) {
            throw new RefusedException(
                    Refusal.TRUNCATED,
                    what + " at byte " + bytes.position() + " needs " + length + " bytes, the file has "
                            + bytes.remaining() + " left");
        }
    }
}
