package org.espalier.film.internal.dicom.codec;

import java.util.Arrays;
import java.util.List;

/** Decodes the lines of a JPEG-LS scan (T.87 annexes A and B). */
final class JpegLsScanDecoder {

    /** Bits of the run length at each run index, the standard's J (annex A.2.1). */
    private static final int[] RUN_BITS = {
        0, 0, 0, 0, 1, 1, 1, 1, 2, 2, 2, 2, 3, 3, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7, 8, 9, 10, 11, 12, 13, 14, 15
    };

    private final JpegLsParameters parameters;
    private final JpegLsReader reader;
    private final JpegLsContexts contexts;
    private final int columns;

    JpegLsScanDecoder(JpegLsParameters parameters, JpegLsReader reader, int columns) {
        this.parameters = parameters;
        this.reader = reader;
        this.columns = columns;
        this.contexts = new JpegLsContexts(parameters, reader);
    }

    /** Components line by line, each with its own runs; a component alone is the same (annex B.2). */
    void byLine(List<Plane> planes) throws CodeStreamException {
        List<Line> lines = planes.stream().map(plane -> new Line(columns)).toList();
        for (int row = 0; row < planes.getFirst().rows(); row++) {
            for (int part = 0; part < planes.size(); part++) {
                decode(List.of(lines.get(part)));
                lines.get(part).store(planes.get(part), row);
            }
        }
    }

    /** Components sample by sample, with common runs (annex B.3). */
    void bySample(List<Plane> planes) throws CodeStreamException {
        List<Line> lines = planes.stream().map(plane -> new Line(columns)).toList();
        for (int row = 0; row < planes.getFirst().rows(); row++) {
            decode(lines);
            for (int part = 0; part < planes.size(); part++) {
                lines.get(part).store(planes.get(part), row);
            }
        }
    }

    private void decode(List<Line> lines) throws CodeStreamException {
        lines.forEach(Line::turn);
        int column = 1;
        while (column <= columns) {
            if (isFlat(lines, column)) {
                column = run(lines, column);
            } else {
                for (Line line : lines) {
                    line.current[column] = contexts.regular(context(line, column), line.prediction(column));
                }
                column++;
            }
        }
    }

    private boolean isFlat(List<Line> lines, int column) {
        for (Line line : lines) {
            if (context(line, column) != 0) {
                return false;
            }
        }
        return true;
    }

    /** The context of three gradients, negative when mirrored (annex A.3). */
    private int context(Line line, int column) {
        int above = line.previous[column];
        int corner = line.previous[column - 1];
        int first = parameters.region(line.previous[column + 1] - above);
        int second = parameters.region(above - corner);
        int third = parameters.region(corner - line.current[column - 1]);
        return (first * 9 + second) * 9 + third;
    }

    /** A run and the sample that breaks it (annex A.7); returns the column after. */
    private int run(List<Line> lines, int start) throws CodeStreamException {
        Line first = lines.getFirst();
        int column = start;
        while (reader.bit()) {
            int length = 1 << RUN_BITS[first.runIndex];
            int filled = Math.min(length, columns + 1 - column);
            lines.forEach(new Run(column, filled)::fill);
            column += filled;
            if (filled == length) {
                first.runIndex = Math.min(first.runIndex + 1, RUN_BITS.length - 1);
            }
            if (column > columns) {
                return column;
            }
        }
        int bits = RUN_BITS[first.runIndex];
        int rest = reader.bits(bits);
        if (column + rest > columns) {
            throw new CodeStreamException("a run longer than its line");
        }
        lines.forEach(new Run(column, rest)::fill);
        column += rest;
        for (Line line : lines) {
            int left = line.current[column - 1];
            int above = line.previous[column];
            boolean similar = lines.size() == 1 && Math.abs(left - above) <= parameters.near();
            line.current[column] = contexts.interruption(similar, left, above, bits);
        }
        first.runIndex = Math.max(first.runIndex - 1, 0);
        return column + 1;
    }

    private record Run(int column, int length) {
        void fill(Line line) {
            Arrays.fill(line.current, column, column + length, line.current[column - 1]);
        }
    }

    /** The line being decoded and the one above, with a sample more at either end (annex A.2.1). */
    private static final class Line {

        private int[] previous;
        private int[] current;
        private int runIndex;

        private Line(int columns) {
            previous = new int[columns + 2];
            current = new int[columns + 2];
        }

        private void turn() {
            int[] oldest = previous;
            previous = current;
            current = oldest;
            previous[previous.length - 1] = previous[previous.length - 2];
            current[0] = previous[1];
        }

        /** The median edge detector (annex A.4.1). */
        private int prediction(int column) {
            int left = current[column - 1];
            int above = previous[column];
            int corner = previous[column - 1];
            if (corner >= Math.max(left, above)) {
                return Math.min(left, above);
            }
            return corner <= Math.min(left, above) ? Math.max(left, above) : left + above - corner;
        }

        private void store(Plane plane, int row) {
            for (int column = 0; column < plane.columns(); column++) {
                plane.set(column, row, current[column + 1]);
            }
        }
    }
}
