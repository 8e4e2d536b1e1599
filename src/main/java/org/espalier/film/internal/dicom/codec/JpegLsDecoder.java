package org.espalier.film.internal.dicom.codec;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Decodes JPEG-LS code streams, lossless and near-lossless (ITU-T T.87). */
public final class JpegLsDecoder {

    private static final int START_OF_IMAGE = 0xD8;
    private static final int END_OF_IMAGE = 0xD9;
    private static final int START_OF_SCAN = 0xDA;
    private static final int RESTART_INTERVAL = 0xDD;
    private static final int START_OF_FRAME = 0xF7;
    private static final int PRESET_PARAMETERS = 0xF8;

    private final JpegSegments segments;
    private final Shape shape;
    private final List<Integer> decoded = new ArrayList<>();
    private short[] samples = {};
    private @Nullable JpegFrame frame;
    private JpegLsParameters preset = JpegLsParameters.defaults();

    private JpegLsDecoder(ByteBuffer stream, Shape shape) {
        this.segments = new JpegSegments(stream);
        this.shape = shape;
    }

    /** The samples interleaved by pixel. */
    public static short[] decode(ByteBuffer stream, Shape shape) throws CodeStreamException {
        return new JpegLsDecoder(stream, shape).decode();
    }

    private short[] decode() throws CodeStreamException {
        if (segments.marker() != START_OF_IMAGE) {
            throw new CodeStreamException("not a JPEG-LS code stream");
        }
        while (frame == null || decoded.size() < frame.components().size()) {
            switch (segments.marker()) {
                case START_OF_FRAME -> frame(segments.segment());
                case PRESET_PARAMETERS -> preset(segments.segment());
                case START_OF_SCAN -> scan(segments.segment());
                case RESTART_INTERVAL -> throw new CodeStreamException("JPEG-LS with restart markers");
                case END_OF_IMAGE -> throw new CodeStreamException("the picture ends before all its components");
                default -> segments.segment();
            }
        }
        return samples;
    }

    /** T.87 annex C.2.2. */
    private void frame(JpegSegments.Segment header) throws CodeStreamException {
        JpegFrame announced = header.frame(true);
        if (frame != null) {
            throw new CodeStreamException("a second frame");
        }
        shape.require(
                announced.columns(), announced.rows(), announced.components().size());
        samples = new short[shape.samples()];
        frame = announced;
    }

    /** T.87 annex C.2.4.1; mapping tables and oversize pictures do not occur in films. */
    private void preset(JpegSegments.Segment segment) throws CodeStreamException {
        if (segment.unsignedByte() != 1) {
            throw new CodeStreamException("JPEG-LS with mapping tables or oversize");
        }
        int maxValue = segment.unsignedShort();
        int t1 = segment.unsignedShort();
        int t2 = segment.unsignedShort();
        int t3 = segment.unsignedShort();
        preset = new JpegLsParameters(maxValue, 0, t1, t2, t3, segment.unsignedShort());
        if (preset.reset() == 1 || preset.reset() == 2) {
            throw new CodeStreamException("contexts that are reset every " + preset.reset() + " samples");
        }
    }

    /** T.87 annex C.2.3. */
    private void scan(JpegSegments.Segment header) throws CodeStreamException {
        if (frame == null) {
            throw new CodeStreamException("a scan before its frame");
        }
        int count = header.unsignedByte();
        List<Plane> planes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            planes.add(plane(frame, header.unsignedByte()));
            if (header.unsignedByte() != 0) {
                throw new CodeStreamException("JPEG-LS with mapping tables");
            }
        }
        int near = header.unsignedByte();
        int interleave = header.unsignedByte();
        if (planes.isEmpty() || header.unsignedByte() != 0 || interleave > 2 || interleave == 0 && count > 1) {
            throw new CodeStreamException("a scan of " + count + " components interleaved by mode " + interleave);
        }
        JpegLsReader reader = segments.lossless();
        JpegLsParameters parameters = JpegLsParameters.of(preset, frame.precision(), near);
        JpegLsScanDecoder decoder = new JpegLsScanDecoder(parameters, reader, shape.columns());
        if (interleave == 2) {
            decoder.bySample(planes);
        } else {
            decoder.byLine(planes);
        }
        segments.continueAt(reader.position());
    }

    private Plane plane(JpegFrame of, int id) throws CodeStreamException {
        for (int i = 0; i < of.components().size(); i++) {
            if (of.components().get(i).id() == id && !decoded.contains(i)) {
                decoded.add(i);
                return Plane.within(samples, shape, i);
            }
        }
        throw new CodeStreamException("a scan of a component that is not there or was before");
    }
}
