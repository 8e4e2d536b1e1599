package org.espalier.film.internal.dicom.codec;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Decodes JPEG code streams with Huffman coding (ITU-T T.81): sequential DCT of 8 and 12 bits and lossless of 2 to 16
 * bits. Colours stay as they are coded, coarser components are interpolated.
 */
public final class JpegDecoder {

    private static final int START_OF_IMAGE = 0xD8;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int START_OF_SCAN = 0xDA;
    private static final int HUFFMAN_TABLES = 0xC4;
    private static final int QUANTISATION_TABLES = 0xDB;
    private static final int RESTART_INTERVAL = 0xDD;
    private static final int MOST_TABLES = 256;

    private final JpegSegments segments;
    private final Shape shape;
    private final HuffmanTable[] dc = new HuffmanTable[4];
    private final HuffmanTable[] ac = new HuffmanTable[4];
    private final int[][] quantisation = new int[4][];
    private final List<Plane> planes = new ArrayList<>();
    private final List<JpegFrame.Component> decoded = new ArrayList<>();
    private short[] samples = {};
    private @Nullable JpegFrame frame;
    private int restartInterval;
    private int tables;

    private JpegDecoder(ByteBuffer stream, Shape shape) {
        this.segments = new JpegSegments(stream);
        this.shape = shape;
    }

    /** The samples interleaved by pixel. */
    public static short[] decode(ByteBuffer stream, Shape shape) throws CodeStreamException {
        return new JpegDecoder(stream, shape).decode();
    }

    private short[] decode() throws CodeStreamException {
        if (segments.marker() != START_OF_IMAGE) {
            throw new CodeStreamException("not a JPEG code stream");
        }
        while (frame == null || decoded.size() < frame.components().size()) {
            int marker = segments.marker();
            switch (marker) {
                case HUFFMAN_TABLES -> huffmanTables(segments.segment());
                case QUANTISATION_TABLES -> quantisationTables(segments.segment());
                case RESTART_INTERVAL -> restartInterval = segments.segment().unsignedShort();
                case 0xC0, 0xC1, 0xC3 -> frame(segments.segment(), marker == 0xC3);
                case 0xC2, 0xC5, 0xC6, 0xC7, 0xC9, 0xCA, 0xCB, 0xCD, 0xCE, 0xCF ->
                    throw new CodeStreamException("a JPEG process that no film uses: " + Integer.toHexString(marker));
                case START_OF_SCAN -> scan(segments.segment());
                case END_OF_IMAGE -> throw new CodeStreamException("the picture ends before all its components");
                default -> segments.segment();
            }
        }
        interpolate(frame);
        return samples;
    }

    private void frame(JpegSegments.Segment header, boolean lossless) throws CodeStreamException {
        if (frame != null) {
            throw new CodeStreamException("a second frame");
        }
        JpegFrame announced = header.frame(lossless);
        shape.require(
                announced.columns(), announced.rows(), announced.components().size());
        samples = new short[shape.samples()];
        for (int i = 0; i < shape.components(); i++) {
            JpegFrame.Component component = announced.components().get(i);
            planes.add(
                    isFull(announced, component)
                            ? Plane.within(samples, shape, i)
                            : Plane.alone(announced.columnsOf(component), announced.rowsOf(component)));
        }
        frame = announced;
    }

    private static boolean isFull(JpegFrame frame, JpegFrame.Component component) {
        return component.horizontal() == frame.maxHorizontal() && component.vertical() == frame.maxVertical();
    }

    /** T.81 section B.2.4.2. */
    private void huffmanTables(JpegSegments.Segment segment) throws CodeStreamException {
        while (segment.hasMore()) {
            int target = segment.unsignedByte();
            int[] counts = new int[16];
            for (int i = 0; i < counts.length; i++) {
                counts[i] = segment.unsignedByte();
            }
            HuffmanTable table =
                    new HuffmanTable(counts, segment.bytes(Arrays.stream(counts).sum()));
            if (++tables > MOST_TABLES || target >>> 4 > 1) {
                throw new CodeStreamException("too many Huffman tables");
            }
            (target >>> 4 == 0 ? dc : ac)[slot(target & 15)] = table;
        }
    }

    /** T.81 section B.2.4.1. */
    private void quantisationTables(JpegSegments.Segment segment) throws CodeStreamException {
        while (segment.hasMore()) {
            int target = segment.unsignedByte();
            int[] table = new int[64];
            for (int i = 0; i < table.length; i++) {
                table[i] = target >>> 4 == 0 ? segment.unsignedByte() : segment.unsignedShort();
            }
            quantisation[slot(target & 15)] = table;
        }
    }

    /** T.81 section B.2.3. Each component is coded once. */
    private void scan(JpegSegments.Segment header) throws CodeStreamException {
        if (frame == null) {
            throw new CodeStreamException("a scan before its frame");
        }
        int count = header.unsignedByte();
        List<JpegScan.Part> parts = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            parts.add(part(frame, header.unsignedByte(), header.unsignedByte()));
        }
        int selection = header.unsignedByte();
        header.unsignedByte();
        int pointTransform = header.unsignedByte() & 15;
        if (parts.isEmpty() || pointTransform >= frame.precision()) {
            throw new CodeStreamException("a scan of nothing");
        }
        JpegScan scan = new JpegScan(List.copyOf(parts), selection, pointTransform, restartInterval);
        EntropyReader reader = segments.entropy();
        if (frame.lossless()) {
            new LosslessScanDecoder(frame, scan, reader).decode();
        } else {
            new DctScanDecoder(frame, scan, reader).decode();
        }
        segments.continueAt(reader.position());
    }

    private JpegScan.Part part(JpegFrame of, int id, int selectors) throws CodeStreamException {
        for (int i = 0; i < of.components().size(); i++) {
            JpegFrame.Component component = of.components().get(i);
            if (component.id() == id && !decoded.contains(component)) {
                decoded.add(component);
                HuffmanTable first = present(dc[slot(selectors >>> 4)]);
                HuffmanTable second = of.lossless() ? first : present(ac[slot(selectors & 15)]);
                int[] divisors = of.lossless() ? new int[0] : present(quantisation[slot(component.quantisation())]);
                return new JpegScan.Part(component, planes.get(i), first, second, divisors);
            }
        }
        throw new CodeStreamException("a scan of a component that is not there or was before");
    }

    private void interpolate(JpegFrame of) {
        for (int i = 0; i < planes.size(); i++) {
            if (!isFull(of, of.components().get(i))) {
                Plane.within(samples, shape, i).interpolate(planes.get(i));
            }
        }
    }

    private static int slot(int number) throws CodeStreamException {
        if (number > 3) {
            throw new CodeStreamException("table " + number + " of 4");
        }
        return number;
    }

    private static <T> T present(@Nullable T table) throws CodeStreamException {
        if (table == null) {
            throw new CodeStreamException("a table is missing");
        }
        return table;
    }
}
