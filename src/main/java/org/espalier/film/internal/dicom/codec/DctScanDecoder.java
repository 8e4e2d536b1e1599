package org.espalier.film.internal.dicom.codec;

import java.util.Arrays;
import org.espalier.film.internal.dicom.codec.JpegScan.Part;

/** Decodes a scan of the sequential DCT processes, 8 or 12 bits (T.81 annex F). */
final class DctScanDecoder {

    private static final int SIZE = InverseDct.SIZE;
    private static final int LAST = SIZE * SIZE - 1;

    private static final int[] ZIGZAG = {
        0, 1, 8, 16, 9, 2, 3, 10, 17, 24, 32, 25, 18, 11, 4, 5, 12, 19, 26, 33, 40, 48, 41, 34, 27, 20, 13, 6, 7, 14,
        21, 28, 35, 42, 49, 56, 57, 50, 43, 36, 29, 22, 15, 23, 30, 37, 44, 51, 58, 59, 52, 45, 38, 31, 39, 46, 53, 60,
        61, 54, 47, 55, 62, 63
    };

    private final JpegFrame frame;
    private final JpegScan scan;
    private final EntropyReader reader;
    private final InverseDct inverse = new InverseDct();
    private final int[] coefficients = new int[SIZE * SIZE];
    private final int[] predictions;

    DctScanDecoder(JpegFrame frame, JpegScan scan, EntropyReader reader) {
        this.frame = frame;
        this.scan = scan;
        this.reader = reader;
        this.predictions = new int[scan.parts().size()];
    }

    /** One component alone comes block by block, several in units that hold blocks of each (T.81 section A.2). */
    void decode() throws CodeStreamException {
        boolean alone = scan.parts().size() == 1;
        Part first = scan.parts().getFirst();
        int across = alone
                ? JpegFrame.ceilDiv(first.plane().columns(), SIZE)
                : JpegFrame.ceilDiv(frame.columns(), SIZE * frame.maxHorizontal());
        int down = alone
                ? JpegFrame.ceilDiv(first.plane().rows(), SIZE)
                : JpegFrame.ceilDiv(frame.rows(), SIZE * frame.maxVertical());
        for (int unit = 0; unit < across * down; unit++) {
            restartBefore(unit);
            if (alone) {
                block(0, unit % across, unit / across);
            } else {
                unit(unit % across, unit / across);
            }
        }
    }

    private void restartBefore(int unit) throws CodeStreamException {
        int interval = scan.restartInterval();
        if (interval > 0 && unit > 0 && unit % interval == 0) {
            reader.restart(unit / interval - 1);
            Arrays.fill(predictions, 0);
        }
    }

    private void unit(int column, int row) throws CodeStreamException {
        for (int part = 0; part < scan.parts().size(); part++) {
            JpegFrame.Component component = scan.parts().get(part).component();
            for (int v = 0; v < component.vertical(); v++) {
                for (int h = 0; h < component.horizontal(); h++) {
                    block(part, column * component.horizontal() + h, row * component.vertical() + v);
                }
            }
        }
    }

    private void block(int index, int column, int row) throws CodeStreamException {
        Part part = scan.parts().get(index);
        Arrays.fill(coefficients, 0);
        predictions[index] += reader.difference(category(part.dc().decode(reader)));
        coefficients[0] = predictions[index] * part.quantisation()[0];
        alternating(part);
        store(part.plane(), column * SIZE, row * SIZE);
    }

    private void alternating(Part part) throws CodeStreamException {
        int k = 1;
        while (k <= LAST) {
            int code = part.ac().decode(reader);
            int run = code >>> 4;
            int size = code & 15;
            if (size == 0 && run < 15) {
                return;
            }
            k += run;
            if (k > LAST) {
                throw new CodeStreamException("a block has more than 64 coefficients");
            }
            coefficients[ZIGZAG[k]] = reader.difference(size) * part.quantisation()[k];
            k++;
        }
    }

    /** Shifts to unsigned, clamps, and drops what lies beyond the edge. */
    private void store(Plane plane, int left, int top) {
        double[] block = inverse.transform(coefficients);
        double level = 1 << (frame.precision() - 1);
        int most = (1 << frame.precision()) - 1;
        int columns = Math.min(SIZE, plane.columns() - left);
        int rows = Math.min(SIZE, plane.rows() - top);
        for (int y = 0; y < rows; y++) {
            for (int x = 0; x < columns; x++) {
                int value = (int) Math.floor(block[y * SIZE + x] + level + 0.5);
                plane.set(left + x, top + y, Math.clamp(value, 0, most));
            }
        }
    }

    private static int category(int symbol) throws CodeStreamException {
        if (symbol > 15) {
            throw new CodeStreamException("a coefficient of more than 15 bits");
        }
        return symbol;
    }
}
