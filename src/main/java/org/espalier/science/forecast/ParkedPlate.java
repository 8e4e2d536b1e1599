package org.espalier.science.forecast;

/**
 * A plate whose metaphyseal screw is out: it is meant to rest, but some go on tethering. Such a limb needs the same
 * visits as one with an active plate.
 *
 * <p>Source: J Pediatr Orthop 2022;42:e762 (25 plates): 16 % went on tethering, seen after 14 months (7 to 22).
 *
 * @param resting its course if it rests
 * @param tethering its forecast as if both screws held
 * @param parkedAt months since the plate at which it was parked
 */
public record ParkedPlate(AfterRelease resting, TetherForecast tethering, double parkedAt) {

    /** The chance that a parked plate goes on tethering. */
    public static final double GOES_ON = 0.16;

    /**
     * How degrees left are spread so many months after parking.
     *
     * @param months after parking, 0 or more
     */
    public Spread degreesLeft(double months) {
        return resting.degreesLeft(months).mixedWith(tethering.degreesLeft(parkedAt + months), GOES_ON);
    }
}
