package org.espalier.film.internal.dicom.codec;

/** The statistics of the contexts of a JPEG-LS scan, and prediction errors decoded by them (T.87 annex A). */
final class JpegLsContexts {

    private static final int REGULAR = 365;
    private static final int LEAST_CORRECTION = -128;
    private static final int GREATEST_CORRECTION = 127;

    private final JpegLsParameters parameters;
    private final JpegLsReader reader;
    private final int range;
    private final int errorBits;
    private final int limit;
    private final int[] magnitudes = new int[REGULAR + 2];
    private final int[] biases = new int[REGULAR];
    private final int[] corrections = new int[REGULAR];
    private final int[] counts = new int[REGULAR + 2];
    private final int[] negatives = new int[2];

    /** Initial values of annex A.2.1. */
    JpegLsContexts(JpegLsParameters parameters, JpegLsReader reader) {
        this.parameters = parameters;
        this.reader = reader;
        this.range = parameters.range();
        this.errorBits = parameters.errorBits();
        this.limit = parameters.limit();
        for (int context = 0; context < magnitudes.length; context++) {
            magnitudes[context] = Math.max(2, (range + 32) / 64);
            counts[context] = 1;
        }
    }

    /** A sample in the regular mode (annex A.4 to A.6): its prediction corrected and its error added. */
    int regular(int signedContext, int prediction) throws CodeStreamException {
        int sign = signedContext < 0 ? -1 : 1;
        int context = Math.abs(signedContext);
        int corrected = Math.clamp(prediction + sign * corrections[context], 0, parameters.maxValue());
        int k = golomb(counts[context], magnitudes[context]);
        int mapped = limited(k, limit);
        int error = unmapped(mapped, parameters.near() == 0 && k == 0 && 2 * biases[context] <= -counts[context]);
        update(context, error);
        return reconstructed(corrected, sign * error);
    }

    /**
     * The sample that breaks a run (annex A.7.2).
     *
     * @param similar whether the samples to the left and above are near each other, the standard's RItype
     * @param runBits the bits of the run length at this run index
     */
    int interruption(boolean similar, int left, int above, int runBits) throws CodeStreamException {
        int type = similar ? 1 : 0;
        int context = REGULAR + type;
        int k = golomb(counts[context], magnitudes[context] + (similar ? counts[context] >> 1 : 0));
        int mapped = limited(k, limit - runBits - 1);
        int doubled = mapped + type;
        boolean odd = (doubled & 1) == 1;
        int size = (doubled + 1) >> 1;
        boolean negative = odd == (k != 0 || 2 * negatives[type] >= counts[context]);
        updateInterruption(type, negative && size > 0, (mapped + 1 - type) >> 1);
        int error = negative ? -size : size;
        return similar ? reconstructed(left, error) : reconstructed(above, left > above ? -error : error);
    }

    private static int golomb(int count, int magnitude) {
        int k = 0;
        while (count << k < magnitude) {
            k++;
        }
        return k;
    }

    /** A limited-length Golomb code (annex A.5.3). */
    private int limited(int k, int longest) throws CodeStreamException {
        int most = longest - errorBits - 1;
        int zeros = reader.zeros(most);
        int value = zeros < most ? zeros << k | reader.bits(k) : reader.bits(errorBits) + 1;
        if (value > 2 * range) {
            throw new CodeStreamException("a prediction error out of range");
        }
        return value;
    }

    /** The inverse of annex A.5.2. */
    private static int unmapped(int mapped, boolean inverted) {
        int error = (mapped & 1) == 0 ? mapped >> 1 : -((mapped + 1) >> 1);
        return inverted ? -error - 1 : error;
    }

    /** Annex A.6. */
    private void update(int context, int error) {
        biases[context] += error * parameters.step();
        magnitudes[context] += Math.abs(error);
        if (counts[context] == parameters.reset()) {
            magnitudes[context] >>= 1;
            biases[context] >>= 1;
            counts[context] >>= 1;
        }
        counts[context]++;
        correct(context);
    }

    private void correct(int context) {
        int count = counts[context];
        if (biases[context] <= -count) {
            biases[context] = Math.max(biases[context] + count, 1 - count);
            corrections[context] = Math.max(corrections[context] - 1, LEAST_CORRECTION);
        } else if (biases[context] > 0) {
            biases[context] = Math.min(biases[context] - count, 0);
            corrections[context] = Math.min(corrections[context] + 1, GREATEST_CORRECTION);
        }
    }

    private void updateInterruption(int type, boolean negative, int magnitude) {
        int context = REGULAR + type;
        negatives[type] += negative ? 1 : 0;
        magnitudes[context] += magnitude;
        if (counts[context] == parameters.reset()) {
            magnitudes[context] >>= 1;
            counts[context] >>= 1;
            negatives[type] >>= 1;
        }
        counts[context]++;
    }

    /** Annex A.4.5 and A.5.4: the error is taken modulo the range. */
    private int reconstructed(int prediction, int error) {
        int value = prediction + error * parameters.step();
        int turn = range * parameters.step();
        if (value < -parameters.near()) {
            value += turn;
        } else if (value > parameters.maxValue() + parameters.near()) {
            value -= turn;
        }
        return Math.clamp(value, 0, parameters.maxValue());
    }
}
