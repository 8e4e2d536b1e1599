package org.espalier.film.internal.dicom.codec;

import org.espalier.film.internal.dicom.codec.JpegScan.Part;

/** Decodes a scan of the lossless process with Huffman coding (T.81 annex H). */
final class LosslessScanDecoder {

    private final JpegFrame frame;
    private final JpegScan scan;
    private final EntropyReader reader;

    LosslessScanDecoder(JpegFrame frame, JpegScan scan, EntropyReader reader) {
        this.frame = frame;
        this.scan = scan;
        this.reader = reader;
    }

    void decode() throws CodeStreamException {
        int interval = scan.restartInterval();
        if (scan.selection() < 1 || scan.selection() > 7 || interval % frame.columns() != 0) {
            throw new CodeStreamException("predictor " + scan.selection() + ", restart interval " + interval);
        }
        int rowsBetween = interval == 0 ? frame.rows() : interval / frame.columns();
        for (int row = 0; row < frame.rows(); row++) {
            boolean first = row % rowsBetween == 0;
            if (first && row > 0) {
                reader.restart(row / rowsBetween - 1);
            }
            line(row, first);
        }
    }

    private void line(int row, boolean first) throws CodeStreamException {
        for (int column = 0; column < frame.columns(); column++) {
            for (Part part : scan.parts()) {
                int prediction = first ? inFirstLine(part.plane(), column, row) : predict(part.plane(), column, row);
                int value = prediction + difference(part.dc().decode(reader));
                part.plane().set(column, row, value << scan.pointTransform());
            }
        }
    }

    /** The first line, and the first after a restart, is predicted from its own beginning (T.81 section H.1.2.1). */
    private int inFirstLine(Plane plane, int column, int row) {
        return column == 0
                ? 1 << (frame.precision() - scan.pointTransform() - 1)
                : plane.get(column - 1, row) >> scan.pointTransform();
    }

    /** The predictors of T.81 table H.1; the first column is predicted from above. */
    private int predict(Plane plane, int column, int row) {
        int shift = scan.pointTransform();
        int above = plane.get(column, row - 1) >> shift;
        if (column == 0) {
            return above;
        }
        int left = plane.get(column - 1, row) >> shift;
        int corner = plane.get(column - 1, row - 1) >> shift;
        return switch (scan.selection()) {
            case 1 -> left;
            case 2 -> above;
            case 3 -> corner;
            case 4 -> left + above - corner;
            case 5 -> left + ((above - corner) >> 1);
            case 6 -> above + ((left - corner) >> 1);
            default -> (left + above) >> 1;
        };
    }

    /** Category 16 stands for 32768 and has no bits (T.81 table H.2); sums are taken modulo 65536. */
    private int difference(int category) throws CodeStreamException {
        if (category > 16) {
            throw new CodeStreamException("a difference of more than 16 bits");
        }
        return category == 16 ? 32768 : reader.difference(category);
    }
}
