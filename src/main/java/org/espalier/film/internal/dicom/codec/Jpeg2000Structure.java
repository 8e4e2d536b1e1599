package org.espalier.film.internal.dicom.codec;

import java.nio.ByteBuffer;

/**
 * Checks the frame of a JPEG 2000 code stream before a library trusts it: the size of the picture (T.800 annex A.5.1),
 * that tile-parts follow each other without a gap (A.4.2), and that no packet holds what none may hold, which would
 * send the library round for ever (B.10.1).
 */
final class Jpeg2000Structure {

    private static final int START = 0xFF4F;
    private static final int SIZE = 0xFF51;
    private static final int TILE_PART = 0xFF90;
    private static final int DATA = 0xFF93;
    private static final int END = 0xFFD9;
    private static final int PACKET_START = 0xFF91;
    private static final int PACKET_HEADER_END = 0xFF92;
    private static final int PACKED_HEADERS_MAIN = 0xFF60;
    private static final int PACKED_HEADERS_TILE = 0xFF61;
    private static final int GREATEST_IN_PACKET = 0xFF8F;
    private static final int SIZE_PARAMETERS = 36;
    private static final int TILE_PART_SEGMENT = 12;
    private static final int MOST_TILES = 4096;

    private final ByteBuffer stream;
    private final Shape shape;

    private Jpeg2000Structure(byte[] stream, Shape shape) {
        this.stream = ByteBuffer.wrap(stream);
        this.shape = shape;
    }

    static void check(byte[] stream, Shape shape) throws CodeStreamException {
        new Jpeg2000Structure(stream, shape).check();
    }

    private void check() throws CodeStreamException {
        if (stream.remaining() < 4 || unsignedShort() != START || unsignedShort() != SIZE) {
            throw new CodeStreamException("not a JPEG 2000 code stream");
        }
        size(segment());
        if (header(TILE_PART) != TILE_PART) {
            throw new CodeStreamException("a JPEG 2000 code stream without tiles");
        }
        int marker = TILE_PART;
        while (marker == TILE_PART) {
            tilePart();
            marker = stream.remaining() < 2 ? END : unsignedShort();
        }
        if (marker != END) {
            throw new CodeStreamException("bytes between tiles that belong to none");
        }
    }

    private void size(ByteBuffer parameters) throws CodeStreamException {
        if (parameters.remaining() < SIZE_PARAMETERS) {
            throw new CodeStreamException("a size that is too short");
        }
        long columns = unsigned(parameters, 2) - unsigned(parameters, 10);
        long rows = unsigned(parameters, 6) - unsigned(parameters, 14);
        int components = Short.toUnsignedInt(parameters.getShort(34));
        shape.require(
                (int) Math.clamp(columns, -1, Integer.MAX_VALUE),
                (int) Math.clamp(rows, -1, Integer.MAX_VALUE),
                components);
        if (tiles(columns, unsigned(parameters, 18)) * tiles(rows, unsigned(parameters, 22)) > MOST_TILES) {
            throw new CodeStreamException("more than " + MOST_TILES + " tiles");
        }
        parameters.position(SIZE_PARAMETERS);
        for (int component = 0; component < components; component++) {
            component(parameters);
        }
    }

    private static long tiles(long extent, long tile) {
        return tile == 0 ? MOST_TILES + 1L : (extent + tile - 1) / tile;
    }

    private static void component(ByteBuffer parameters) throws CodeStreamException {
        int precision = (parameters.get() & 0x7F) + 1;
        if (precision > 16 || parameters.get() != 1 || parameters.get() != 1) {
            throw new CodeStreamException("samples of " + precision + " bits, or coarser than the picture");
        }
    }

    /** Passes over marker segments up to a marker. Headers of packets must stand in the packets. */
    private int header(int until) throws CodeStreamException {
        while (true) {
            int marker = unsignedShort();
            if (marker == until) {
                return marker;
            }
            if (marker <= 0xFF00 || marker == PACKED_HEADERS_MAIN || marker == PACKED_HEADERS_TILE) {
                throw new CodeStreamException("marker " + Integer.toHexString(marker) + " in a header");
            }
            segment();
        }
    }

    private void tilePart() throws CodeStreamException {
        int start = stream.position() - 2;
        ByteBuffer parameters = segment();
        long length = parameters.remaining() == 8 ? unsigned(parameters, 2) : -1;
        int end = length == 0 ? endOfLast() : (int) Math.min(start + length, Integer.MAX_VALUE);
        if (end > stream.limit() || end < start + TILE_PART_SEGMENT) {
            throw new CodeStreamException("a tile that reaches beyond the code stream");
        }
        header(DATA);
        packets(end);
    }

    /** A tile-part of unstated length is the last and ends with the code stream. */
    private int endOfLast() {
        int last = stream.limit();
        return last >= 2 && Short.toUnsignedInt(stream.getShort(last - 2)) == END ? last - 2 : last;
    }

    /** In packets a byte FF is followed by at most 8F, but for the two markers made for them. */
    private void packets(int end) throws CodeStreamException {
        if (stream.position() > end) {
            throw new CodeStreamException("a tile whose header is longer than itself");
        }
        while (stream.position() < end) {
            if (stream.get() != -1 || stream.position() == end) {
                continue;
            }
            int pair = 0xFF00 | stream.get() & 0xFF;
            if (pair == PACKET_START && stream.position() + 4 <= end) {
                stream.position(stream.position() + 4);
            } else if (pair > GREATEST_IN_PACKET && pair != PACKET_HEADER_END) {
                throw new CodeStreamException("a packet with a marker inside");
            }
        }
    }

    private ByteBuffer segment() throws CodeStreamException {
        int length = unsignedShort() - 2;
        if (length < 0 || length > stream.remaining()) {
            throw new CodeStreamException("the code stream ends within a marker segment");
        }
        ByteBuffer segment = stream.slice(stream.position(), length);
        stream.position(stream.position() + length);
        return segment;
    }

    private int unsignedShort() throws CodeStreamException {
        if (stream.remaining() < 2) {
            throw new CodeStreamException("the code stream ends before the picture does");
        }
        return Short.toUnsignedInt(stream.getShort());
    }

    private static long unsigned(ByteBuffer parameters, int at) {
        return Integer.toUnsignedLong(parameters.getInt(at));
    }
}
