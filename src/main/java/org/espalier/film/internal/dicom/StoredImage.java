package org.espalier.film.internal.dicom;

import org.espalier.film.internal.dicom.codec.Shape;

/**
 * The stored values of a picture: masked to Bits Stored and sign-extended (PS3.5 section 8.1.1), before any rescaling
 * or window. Samples are interleaved by pixel, row by row.
 */
public final class StoredImage implements Decoded {

    private final Shape shape;
    private final int bitsStored;
    private final boolean signed;
    private final Photometric photometric;
    private final short[] samples;

    /** Takes the samples over without copying; each must already be masked and sign-extended. */
    StoredImage(PixelDescription description, short[] samples) {
        if (samples.length != description.shape().samples()) {
            throw new IllegalArgumentException(samples.length + " samples for " + description.shape());
        }
        this.shape = description.shape();
        this.bitsStored = description.bitsStored();
        this.signed = description.signed();
        this.photometric = description.photometric();
        this.samples = samples;
    }

    public int columns() {
        return shape.columns();
    }

    public int rows() {
        return shape.rows();
    }

    public int bitsStored() {
        return bitsStored;
    }

    public boolean isSigned() {
        return signed;
    }

    public Photometric photometric() {
        return photometric;
    }

    /** The samples themselves, not a copy; of an unsigned image take {@code sample & 0xFFFF}. */
    public short[] samples() {
        return samples;
    }

    /** The value of one sample, counted over pixels and samples together. */
    public int value(int index) {
        return signed ? samples[index] : samples[index] & 0xFFFF;
    }
}
