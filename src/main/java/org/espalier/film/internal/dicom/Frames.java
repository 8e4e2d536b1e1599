package org.espalier.film.internal.dicom;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;

/** Finds the code stream of the first frame among the fragments of a file (PS3.5 annex A.4). */
final class Frames {

    private static final int ITEM_HEADER = 8;
    private static final int ALLOWANCE = 1 << 20;

    private Frames() {}

    /** The code stream of the first frame; copied together only when it stands in several fragments. */
    static ByteBuffer first(PixelDescription description, Element.Fragments encapsulated) throws RefusedException {
        List<Element.Bytes> fragments = ofFirst(description, encapsulated);
        long length = fragments.stream()
                .mapToLong(fragment -> fragment.bytes().remaining())
                .sum();
        long most = 2L * description.shape().samples() * description.bytesAllocated() + ALLOWANCE;
        if (fragments.isEmpty() || length > most) {
            throw new RefusedException(
                    Refusal.CODE_STREAM_BROKEN, length + " bytes for one frame of " + description.shape());
        }
        if (fragments.size() == 1) {
            return fragments.getFirst().bytes();
        }
        ByteBuffer joined = ByteBuffer.allocate((int) length);
        fragments.forEach(fragment -> joined.put(fragment.bytes()));
        return joined.flip();
    }

    private static List<Element.Bytes> ofFirst(PixelDescription description, Element.Fragments encapsulated)
            throws RefusedException {
        List<Element.Bytes> fragments = encapsulated.fragments();
        if (description.frames() == 1) {
            return fragments;
        }
        if (description.frames() == fragments.size()) {
            return fragments.subList(0, 1);
        }
        return fragments.subList(0, beforeSecond(encapsulated));
    }

    /** The number of fragments before the offset of the second frame. */
    private static int beforeSecond(Element.Fragments encapsulated) throws RefusedException {
        ByteBuffer offsets = encapsulated.offsets().bytes().order(ByteOrder.LITTLE_ENDIAN);
        if (offsets.remaining() >= 8) {
            long second = Integer.toUnsignedLong(offsets.getInt(4));
            long at = 0;
            for (int count = 0; count < encapsulated.fragments().size(); count++) {
                if (at == second) {
                    return count;
                }
                at += ITEM_HEADER + encapsulated.fragments().get(count).bytes().remaining();
            }
        }
        throw new RefusedException(Refusal.PIXELS_DESCRIBED_WRONGLY, "where the second frame begins is not said");
    }
}
