package org.espalier.film.internal.dicom;

/**
 * What one file may ask of this machine.
 *
 * @param fileBytes the longest file, in bytes
 * @param samples the most samples (rows × columns × samples per pixel) one image may have
 * @param inflatedBytes the most bytes a deflated data set may grow to
 * @param depth the deepest nesting of sequences
 * @param elements the most elements and sequence items in one file, at all depths together
 */
public record Limits(long fileBytes, int samples, int inflatedBytes, int depth, int elements) {

    /** Room for a stitched standing film of 5000 × 9600 pixels; everything together stays below 512 MiB of heap. */
    public static final Limits STANDARD = new Limits(512L << 20, 48_000_000, 192 << 20, 32, 100_000);

    public Limits {
        if (fileBytes <= 0 || fileBytes > Integer.MAX_VALUE) {
            throw new IllegalArgumentException("fileBytes must be in 1..2^31-1: " + fileBytes);
        }
        if (samples <= 0 || inflatedBytes <= 0 || depth <= 0 || elements <= 0) {
            throw new IllegalArgumentException(
                    "limits must be positive: " + samples + ", " + inflatedBytes + ", " + depth + ", " + elements);
        }
    }
}
