package org.espalier.science.forecast;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.espalier.science.quantity.Sex;

/**
 * One growth plate with a tether, as it is known on a day. Months count from the day the plate was placed, at 30.4375
 * days.
 *
 * @param site which growth plate
 * @param cause why the limb is bent
 * @param sex the child's
 * @param yearsAtPlate age in years when the plate was placed, 0 to 25
 * @param boneAgeAtPlate skeletal age in years at that time, if it was read
 * @param films the standing films until now, the first usually before the plate
 * @param seenBroken months after which a broken screw was seen
 */
public record TetheredPhysis(
        PhysisSite site,
        Cause cause,
        Sex sex,
        double yearsAtPlate,
        OptionalDouble boneAgeAtPlate,
        List<Film> films,
        OptionalDouble seenBroken) {

    /**
     * One reading.
     *
     * @param months months since the plate, below 0 before it
     * @param degreesLeft degrees left to the target, + while still deformed
     */
    public record Film(double months, double degreesLeft) {

        /**
         * Checks the reading.
         *
         * @throws IllegalArgumentException if it is not finite or beyond 90 degrees
         */
        public Film {
            if (!Double.isFinite(months) || !(Math.abs(degreesLeft) <= 90)) {
                throw new IllegalArgumentException(
                        "A film cannot be at " + months + " months with " + degreesLeft + " degrees left");
            }
        }
    }

    /**
     * Sorts the films by time and checks the ages.
     *
     * @throws IllegalArgumentException if an age lies outside 0 to 25 years
     */
    public TetheredPhysis {
        if (!(yearsAtPlate >= 0 && yearsAtPlate <= 25)
                || boneAgeAtPlate.stream().anyMatch(years -> !(years >= 0 && years <= 25))) {
            throw new IllegalArgumentException(
                    "A plate is placed at 0 to 25 years of age, not at " + yearsAtPlate + " and " + boneAgeAtPlate);
        }
        films = films.stream().sorted(Comparator.comparingDouble(Film::months)).toList();
    }

    /** Months since the plate at the last film; 0 before any film with the plate. */
    public double lastFilm() {
        return films.isEmpty() ? 0 : Math.max(0, films.getLast().months());
    }
}
