package org.espalier.outcomes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.OptionalDouble;
import org.espalier.patient.ChildId;
import org.espalier.science.forecast.FiveQuantiles;
import org.espalier.treatment.PhysisKey;

/**
 * A forecast as it was given with the film that came later, in degrees left to the target: + still deformed, − past it.
 *
 * @param from the day it looked ahead from; it knew no later film
 * @param beforehand whether it was written down before the film was taken; not of records brought in later
 * @param line where a straight line through its last two films came to
 */
public record JudgedForecast(
        ChildId child,
        PhysisKey physis,
        LocalDate from,
        LocalDate filmOn,
        boolean beforehand,
        FiveQuantiles foretold,
        double came,
        OptionalDouble line) {

    private static final double DAYS_OF_A_MONTH = 30.4375;

    /** How far ahead it looked. */
    public double months() {
        return ChronoUnit.DAYS.between(from, filmOn) / DAYS_OF_A_MONTH;
    }
}
