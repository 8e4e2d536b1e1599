package org.espalier.film.internal.dicom.codec;

/**
 * The shape of a picture.
 *
 * @param columns pixels in a row
 * @param rows rows
 * @param components samples of each pixel
 */
public record Shape(int columns, int rows, int components) {

    public Shape {
        if (columns <= 0 || rows <= 0 || components <= 0) {
            throw new IllegalArgumentException("empty shape " + columns + " x " + rows + " x " + components);
        }
        if ((long) columns * rows * components > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("shape too large " + columns + " x " + rows + " x " + components);
        }
    }

    /** The number of samples, pixel by pixel and row by row. */
    public int samples() {
        return columns * rows * components;
    }

    public int pixels() {
        return columns * rows;
    }

    void require(int streamColumns, int streamRows, int streamComponents) throws CodeStreamException {
        if (columns != streamColumns || rows != streamRows || components != streamComponents) {
            throw new CodeStreamException("the code stream holds " + streamColumns + " x " + streamRows + " pixels of "
                    + streamComponents + " samples, its description says " + columns + " x " + rows + " of "
                    + components);
        }
    }
}
