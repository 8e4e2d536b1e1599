package org.espalier.film.internal.dicom.codec;

/**
 * The coding parameters of a JPEG-LS scan (T.87 annex C.2.4.1.1), defaults filled in.
 *
 * @param maxValue the greatest sample
 * @param near how far a sample may be from the original, 0 for lossless
 * @param t1 first threshold of gradients
 * @param t2 second threshold
 * @param t3 third threshold
 * @param reset how many samples halve the counters of a context
 */
record JpegLsParameters(int maxValue, int near, int t1, int t2, int t3, int reset) {

    private static final int BASIC_T1 = 3;
    private static final int BASIC_T2 = 7;
    private static final int BASIC_T3 = 21;

    /** The preset parameters with the defaults of annex C.2.4.1.1.1 for those that are 0. */
    static JpegLsParameters of(JpegLsParameters preset, int precision, int near) throws CodeStreamException {
        int max = preset.maxValue == 0 ? (1 << precision) - 1 : preset.maxValue;
        if (max >= 1 << precision || near > Math.min(255, max / 2)) {
            throw new CodeStreamException("greatest sample " + max + ", nearness " + near);
        }
        boolean wide = max >= 128;
        int factor = wide ? (Math.min(max, 4095) + 128) / 256 : 256 / (max + 1);
        int t1 = threshold(preset.t1, wide ? factor * (BASIC_T1 - 2) + 2 : Math.max(2, BASIC_T1 / factor), 3 * near);
        int t2 = threshold(preset.t2, wide ? factor * (BASIC_T2 - 3) + 3 : Math.max(3, BASIC_T2 / factor), 5 * near);
        int t3 = threshold(preset.t3, wide ? factor * (BASIC_T3 - 4) + 4 : Math.max(4, BASIC_T3 / factor), 7 * near);
        int first = clamped(t1, near + 1, max);
        int second = clamped(t2, first, max);
        int third = clamped(t3, second, max);
        return new JpegLsParameters(max, near, first, second, third, preset.reset == 0 ? 64 : preset.reset);
    }

    static JpegLsParameters defaults() {
        return new JpegLsParameters(0, 0, 0, 0, 0, 0);
    }

    private static int threshold(int preset, int basic, int widening) {
        return preset == 0 ? basic + widening : preset;
    }

    private static int clamped(int value, int least, int most) {
        return value > most || value < least ? least : value;
    }

    /** One step of quantised errors. */
    int step() {
        return 2 * near + 1;
    }

    /** The number of different quantised errors. */
    int range() {
        return (maxValue + 2 * near) / step() + 1;
    }

    /** Bits of a quantised error. */
    int errorBits() {
        return ceilLog2(range());
    }

    /** The longest code word. */
    int limit() {
        int bits = Math.max(2, ceilLog2(maxValue + 1));
        return 2 * (bits + Math.max(8, bits));
    }

    /** The region of a gradient, -4 to 4 (T.87 annex A.3.3). */
    int region(int gradient) {
        int size = Math.abs(gradient);
        int region = size <= near ? 0 : size < t1 ? 1 : size < t2 ? 2 : size < t3 ? 3 : 4;
        return gradient < 0 ? -region : region;
    }

    private static int ceilLog2(int value) {
        return 32 - Integer.numberOfLeadingZeros(value - 1);
    }
}
