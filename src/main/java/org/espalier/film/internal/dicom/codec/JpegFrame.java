package org.espalier.film.internal.dicom.codec;

import java.util.List;

/**
 * The frame header of a JPEG code stream (T.81 section B.2.2).
 *
 * @param lossless whether the process is lossless rather than the discrete cosine transform
 * @param precision bits of a sample
 * @param columns samples in a line
 * @param rows lines
 * @param components its components in the order of the header
 */
record JpegFrame(boolean lossless, int precision, int columns, int rows, List<Component> components) {

    /**
     * A component of a frame.
     *
     * @param id its number
     * @param horizontal its horizontal sampling factor
     * @param vertical its vertical sampling factor
     * @param quantisation the number of its quantisation table
     */
    record Component(int id, int horizontal, int vertical, int quantisation) {}

    int maxHorizontal() {
        return components.stream().mapToInt(Component::horizontal).max().orElse(1);
    }

    int maxVertical() {
        return components.stream().mapToInt(Component::vertical).max().orElse(1);
    }

    /** Samples in a line of a component (T.81 section A.1.1). */
    int columnsOf(Component component) {
        return ceilDiv(columns * component.horizontal(), maxHorizontal());
    }

    int rowsOf(Component component) {
        return ceilDiv(rows * component.vertical(), maxVertical());
    }

    static int ceilDiv(int dividend, int divisor) {
        return (dividend + divisor - 1) / divisor;
    }
}
