package org.espalier.science.alignment;

/**
 * The quadrant of the knee through which the line from hip to ankle passes, signed: − medial, + lateral. Zone 1 is the
 * inner half of either half of the plateau, 2 the outer half, 3 outside the joint; exactly in the middle is +1.
 *
 * <p>A convention, not physics: the source stands beside it. Source: after Müller and Müller-Färber 1984 (meaning of
 * the zones read in a figure); borders at 50 and 100 % of the half-width and the sign from memory.
 *
 * @param number −3 to 3, not 0
 */
public record AxisZone(int number) {

    /** What has to stand beside a zone. */
    public static final String SOURCE =
            "Zones after Müller and Müller-Färber 1984; borders and sign from memory, unverified";

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is 0 or beyond 3 either way
     */
    public AxisZone {
        if (number == 0 || Math.abs(number) > 3) {
            throw new IllegalArgumentException("Zones run from 1 to 3 either way, not to " + number);
        }
    }

    /**
     * The zone of a crossing.
     *
     * @param percent where the line crosses the plateau line, 0 at its medial and 100 at its lateral end
     */
    public static AxisZone of(double percent) {
        double ofHalf = (percent - 50) / 50;
        int zone = Math.abs(ofHalf) <= 0.5 ? 1 : Math.abs(ofHalf) <= 1 ? 2 : 3;
        return new AxisZone(ofHalf < 0 ? -zone : zone);
    }
}
