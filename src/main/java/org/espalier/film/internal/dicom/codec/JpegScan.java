package org.espalier.film.internal.dicom.codec;

import java.util.List;

/**
 * A scan of a JPEG code stream (T.81 section B.2.3).
 *
 * @param parts the components coded in it
 * @param selection start of spectral selection, in lossless processes the predictor
 * @param pointTransform bits taken off each sample before lossless coding
 * @param restartInterval units between restart markers, 0 for none
 */
record JpegScan(List<Part> parts, int selection, int pointTransform, int restartInterval) {

    /**
     * A component in a scan.
     *
     * @param component the component
     * @param plane where its samples go
     * @param dc the table for DC coefficients or lossless differences
     * @param ac the table for AC coefficients; unused when lossless
     * @param quantisation the quantisation table in zigzag order; unused when lossless
     */
    record Part(JpegFrame.Component component, Plane plane, HuffmanTable dc, HuffmanTable ac, int[] quantisation) {}
}
