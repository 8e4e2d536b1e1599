package org.espalier.film.internal.clip;

import java.util.HashSet;
import java.util.Set;

/**
 * A WebM (RFC 8794, RFC 9559) with the frames of its picture and the numbers needed to play them. Sound, tags, titles,
 * dates, attachments, names of programs and checksums become empty space of the same length.
 */
public final class SilentWebm {

    private static final int EBML = 0x1A45DFA3;
    private static final int TRACK_ENTRY = 0xAE;
    private static final int TRACK_NUMBER = 0xD7;
    private static final int TRACK_UID = 0x73C5;
    private static final int TRACK_TYPE = 0x83;
    private static final int CODEC = 0x86;
    private static final int SIMPLE_BLOCK = 0xA3;
    private static final int BLOCK_GROUP = 0xA0;
    private static final int BLOCK = 0xA1;
    private static final int MUXING_APP = 0x4D80;
    private static final int WRITING_APP = 0x5741;
    private static final int VOID = 0xEC;
    private static final int PICTURE = 1;

    /** Segment, Info, Tracks, Cluster, Video: entered. */
    private static final Set<Integer> HOLDERS = Set.of(0x18538067, 0x1549A966, 0x1654AE6B, 0x1F43B675, 0xE0);

    /**
     * Where to seek; scale and length; how frames are stored; size, crop, depth and colours; times of clusters and
     * blocks.
     */
    private static final Set<Integer> KEPT = Set.of(
            EBML,
            0x114D9B74,
            0x1C53BB6B,
            0x2AD7B1,
            0x4489,
            TRACK_NUMBER,
            TRACK_TYPE,
            CODEC,
            0xB9,
            0x88,
            0x55AA,
            0x9C,
            0x6DE7,
            0x6DF8,
            0x23E383,
            0x63A2,
            0x56AA,
            0x56BB,
            0x55EE,
            0xB0,
            0xBA,
            0x54B0,
            0x54BA,
            0x54B2,
            0x54AA,
            0x54BB,
            0x54CC,
            0x54DD,
            0x9A,
            0x9D,
            0x53B8,
            0x53C0,
            0x55B0,
            0xE7,
            0xA7,
            0xAB,
            BLOCK,
            0x9B,
            0xFB,
            0x75A2);

    private static final Set<String> CODECS = Set.of("V_VP8", "V_VP9", "V_AV1");

    private final ClipBytes bytes;
    private final Set<Long> pictures = new HashSet<>();

    private SilentWebm(ClipBytes bytes) {
        this.bytes = bytes;
    }

    /**
     * Takes out in place what stands beside the picture.
     *
     * @throws ClipNotUnderstood when the file is not so built; its bytes are then of no use
     */
    public static void strip(byte[] file) throws ClipNotUnderstood {
        new SilentWebm(new ClipBytes(file)).walk();
    }

    /** An element: where it begins, where its content does, and how much content there is; −1 when that is not told. */
    private record Element(int id, int from, int content, long size) {

        int end() {
            return Math.toIntExact(content + size);
        }
    }

    /** In the order of the file; those that hold others are entered, whatever is not known is emptied. */
    private void walk() throws ClipNotUnderstood {
        int at = 0;
        while (at < bytes.length()) {
            var element = element(at);
            if (HOLDERS.contains(element.id()) || element.id() == TRACK_ENTRY && isPicture(element)) {
                at = element.content();
                continue;
            }
            demandEnd(element);
            switch (element.id()) {
                case MUXING_APP, WRITING_APP -> bytes.fill(element.content(), element.end(), 0);
                case TRACK_UID -> number(element);
                case SIMPLE_BLOCK -> keepIf(pictures.contains(track(element)), element);
                case BLOCK_GROUP -> {
                    if (holdsPicture(element)) {
                        at = element.content();
                        continue;
                    }
                    empty(element);
                }
                default -> keepIf(KEPT.contains(element.id()), element);
            }
            at = element.end();
        }
        if (pictures.isEmpty()) {
            throw new ClipNotUnderstood("no picture");
        }
    }

    /** The number that names the track among all tracks of the world becomes its place. */
    private void number(Element uid) throws ClipNotUnderstood {
        bytes.fill(uid.content(), uid.end(), 0);
        bytes.write(uid.end() - 1, pictures.size());
    }

    private void keepIf(boolean kept, Element element) throws ClipNotUnderstood {
        if (!kept) {
            empty(element);
        }
    }

    private boolean isPicture(Element entry) throws ClipNotUnderstood {
        demandEnd(entry);
        long number = 0;
        long type = 0;
        String codec = "";
        for (int at = entry.content(); at < entry.end(); ) {
            var child = element(at);
            demandEnd(child);
            switch (child.id()) {
                case TRACK_NUMBER -> number = bytes.number(child.content(), Math.toIntExact(child.size()));
                case TRACK_TYPE -> type = bytes.number(child.content(), Math.toIntExact(child.size()));
                case CODEC -> codec = text(child);
                default -> {}
            }
            at = child.end();
        }
        if (type == PICTURE && !CODECS.contains(codec)) {
            throw new ClipNotUnderstood("frames of a kind that is not known");
        }
        if (type == PICTURE) {
            pictures.add(number);
        }
        return type == PICTURE;
    }

    private String text(Element element) throws ClipNotUnderstood {
        var text = new StringBuilder();
        for (int at = element.content(); at < element.end(); at++) {
            text.append((char) bytes.at(at));
        }
        return text.toString();
    }

    private boolean holdsPicture(Element group) throws ClipNotUnderstood {
        for (int at = group.content(); at < group.end(); ) {
            var child = element(at);
            demandEnd(child);
            if (child.id() == BLOCK) {
                return pictures.contains(track(child));
            }
            at = child.end();
        }
        return false;
    }

    private long track(Element block) throws ClipNotUnderstood {
        return size(block.content());
    }

    /** Void, with its size in one byte or in eight. */
    private void empty(Element element) throws ClipNotUnderstood {
        int whole = element.end() - element.from();
        bytes.fill(element.from(), element.end(), 0);
        bytes.write(element.from(), VOID);
        if (whole - 2 < 0x7F) {
            bytes.write(element.from() + 1, 0x80 | whole - 2);
            return;
        }
        bytes.write(element.from() + 1, 1);
        long left = whole - 9L;
        for (int i = 8; i > 4; i--) {
            bytes.write(element.from() + i, (int) left & 0xFF);
            left >>= 8;
        }
    }

    private void demandEnd(Element element) throws ClipNotUnderstood {
        if (element.size() < 0) {
            throw new ClipNotUnderstood("an element without an end");
        }
        bytes.demand(element.content(), element.size());
    }

    private Element element(int at) throws ClipNotUnderstood {
        int idBytes = bytesOf(at);
        if (idBytes > Integer.BYTES) {
            throw new ClipNotUnderstood("no element begins at " + at);
        }
        int id = (int) bytes.number(at, idBytes);
        int sizeAt = at + idBytes;
        return new Element(id, at, sizeAt + bytesOf(sizeAt), size(sizeAt));
    }

    private int bytesOf(int at) throws ClipNotUnderstood {
        int more = Integer.numberOfLeadingZeros(bytes.at(at)) - 24;
        if (more >= Long.BYTES) {
            throw new ClipNotUnderstood("no number begins at " + at);
        }
        return more + 1;
    }

    /** A number without its marker bit; all ones mean that it is not told. */
    private long size(int at) throws ClipNotUnderstood {
        int count = bytesOf(at);
        bytes.demand(at, count);
        long size = bytes.at(at) & (0xFF >> count);
        for (int i = 1; i < count; i++) {
            size = size << 8 | bytes.at(at + i);
        }
        return size == (1L << 7 * count) - 1 ? -1 : size;
    }
}
