package org.espalier.film.internal.dicom.codec;

import java.io.EOFException;
import java.io.IOException;
import javax.imageio.stream.ImageInputStreamImpl;

/**
 * A code stream for a library that, told of the end, would go on asking for ever: here the end is an error, and so is
 * reading much more than there is.
 */
final class StrictInput extends ImageInputStreamImpl {

    private static final int MOST_READINGS = 64;
    private static final int ALLOWANCE = 1 << 16;

    private final byte[] data;
    private long budget;

    StrictInput(byte[] data) {
        this.data = data;
        this.budget = (long) data.length * MOST_READINGS + ALLOWANCE;
    }

    @Override
    public int read() throws IOException {
        take(1);
        return data[(int) streamPos++] & 0xFF;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        int count = (int) Math.min(length, data.length - streamPos);
        take(length == 0 ? 0 : Math.max(1, count));
        System.arraycopy(data, (int) streamPos, into, offset, count);
        streamPos += count;
        return count;
    }

    @Override
    public long length() {
        return data.length;
    }

    private void take(int bytes) throws IOException {
        bitOffset = 0;
        budget -= bytes;
        if (streamPos + bytes > data.length || budget < 0) {
            throw new EOFException();
        }
    }
}
