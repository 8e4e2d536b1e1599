package org.espalier.film.internal.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A box of an MP4 (ISO/IEC 14496-12).
 *
 * @param from where it begins
 * @param content where its content begins
 * @param end where the next one begins
 */
record Box(String name, int from, int content, int end) {

    private static final int SHORT_HEAD = 8;
    private static final int LONG_HEAD = 16;
    private static final long SIZE_FOLLOWS = 1;
    private static final String EMPTY = "free";

    static List<Box> of(ClipBytes bytes, int from, int to) throws ClipNotUnderstood {
        var boxes = new ArrayList<Box>();
        for (int at = from; at < to; ) {
            var box = one(bytes, at, to);
            boxes.add(box);
            at = box.end();
        }
        return boxes;
    }

    private static Box one(ClipBytes bytes, int at, int to) throws ClipNotUnderstood {
        long size = bytes.word(at);
        int head = size == SIZE_FOLLOWS ? LONG_HEAD : SHORT_HEAD;
        if (size == SIZE_FOLLOWS) {
            size = bytes.longWord(at + SHORT_HEAD);
        } else if (size == 0) {
            size = to - at;
        }
        if (size < head || size > to - at) {
            throw new ClipNotUnderstood("a box of " + size + " bytes where " + (to - at) + " are left");
        }
        return new Box(bytes.name(at + Integer.BYTES), at, at + head, Math.toIntExact(at + size));
    }

    List<Box> children(ClipBytes bytes) throws ClipNotUnderstood {
        return of(bytes, content, end);
    }

    Optional<Box> child(ClipBytes bytes, String wanted) throws ClipNotUnderstood {
        return children(bytes).stream().filter(box -> box.name.equals(wanted)).findFirst();
    }

    Box demand(ClipBytes bytes, String wanted) throws ClipNotUnderstood {
        return child(bytes, wanted).orElseThrow(() -> new ClipNotUnderstood("no " + wanted));
    }

    /** Makes it empty space of the same length. */
    void empty(ClipBytes bytes) throws ClipNotUnderstood {
        bytes.write(from + Integer.BYTES, EMPTY);
        bytes.fill(content, end, 0);
    }
}
