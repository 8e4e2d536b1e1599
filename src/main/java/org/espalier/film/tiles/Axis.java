package org.espalier.film.tiles;

/**
 * Along one side of a view: between which two pixels of the level each drawn pixel lies, and how far.
 *
 * @param start the first pixel of the level that is needed
 * @param length how many are needed
 * @param before for each drawn pixel, the nearer one before, counted from start
 * @param share for each drawn pixel, the weight of the one after it, of 256
 */
record Axis(int start, int length, int[] before, int[] share) {

    static final int WHOLE = 256;

    /**
     * @param origin the region's edge, in pixels of the level
     * @param step pixels of the level a drawn pixel
     * @param drawn how many pixels are drawn
     * @param available pixels of the level
     */
    static Axis of(double origin, double step, int drawn, int available) {
        var before = new int[drawn];
        var share = new int[drawn];
        for (int i = 0; i < drawn; i++) {
            double centre = Math.clamp(origin + (i + 0.5) * step - 0.5, 0, available - 1);
            int weighted = (int) Math.round(centre * WHOLE);
            before[i] = weighted / WHOLE;
            share[i] = weighted % WHOLE;
        }
        int start = before[0];
        int last = Math.min(before[drawn - 1] + 1, available - 1);
        for (int i = 0; i < drawn; i++) {
            before[i] -= start;
        }
        return new Axis(start, last - start + 1, before, share);
    }

    int drawn() {
        return before.length;
    }

    int after(int i) {
        return Math.min(before[i] + 1, length - 1);
    }

    /** Whether each drawn pixel is one pixel of the level. */
    boolean isExact() {
        for (int i = 0; i < before.length; i++) {
            if (share[i] != 0 || before[i] != i) {
                return false;
            }
        }
        return true;
    }
}
