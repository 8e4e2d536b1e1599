package org.espalier.prognosis;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.TetheredPhysis;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;
import org.jspecify.annotations.Nullable;

/**
 * Everything a forecast is made from, as it is kept with it.
 *
 * @param plateOn the day the plate was placed
 * @param targetDegrees the joint angle aimed at
 * @param isCauseStudied whether the diagnosis is a group with rates of its own
 * @param boneYearsAtPlate bone age then; null when age since birth counts
 * @param brokenOn when a screw was seen broken; null when none was
 * @param rates the centre's rates it is made by; null for the published ones
 */
record ForecastInputs(
        PhysisSite site,
        Deformity deformity,
        Cause cause,
        boolean isCauseStudied,
        Sex sex,
        LocalDate plateOn,
        double yearsAtPlate,
        @Nullable Double boneYearsAtPlate,
        double targetDegrees,
        List<Film> films,
        @Nullable LocalDate brokenOn,
        @Nullable UUID rates) {

    private static final double DAYS_IN_A_MONTH = 30.4375;

    /**
     * One film.
     *
     * @param degrees the joint angle read
     */
    record Film(LocalDate on, double degrees) {}

    ForecastInputs {
        films = List.copyOf(films);
    }

    TetheredPhysis toPhysis() {
        return new TetheredPhysis(
                site,
                cause,
                sex,
                yearsAtPlate,
                boneYearsAtPlate == null ? OptionalDouble.empty() : OptionalDouble.of(boneYearsAtPlate),
                films.stream()
                        .map(film -> new TetheredPhysis.Film(
                                months(film.on),
                                deformity.degreesLeft(site, new Angle(film.degrees), new Angle(targetDegrees))))
                        .toList(),
                brokenOn == null ? OptionalDouble.empty() : OptionalDouble.of(months(brokenOn)));
    }

    /** The same as facts alone. */
    ForecastInputs withoutRates() {
        return with(films, null);
    }

    /** The same with a later film of this physis besides. */
    ForecastInputs withFilm(LocalDate on, double degrees) {
        return with(
                Stream.concat(films.stream(), Stream.of(new Film(on, degrees))).toList(), rates);
    }

    private ForecastInputs with(List<Film> others, @Nullable UUID otherRates) {
        return new ForecastInputs(
                site,
                deformity,
                cause,
                isCauseStudied,
                sex,
                plateOn,
                yearsAtPlate,
                boneYearsAtPlate,
                targetDegrees,
                others,
                brokenOn,
                otherRates);
    }

    /** Months from the plate to a day, below 0 before it. */
    double months(LocalDate day) {
        return monthsBetween(plateOn, day);
    }

    static double monthsBetween(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / DAYS_IN_A_MONTH;
    }

    LocalDate day(double months) {
        return plateOn.plusDays(Math.round(months * DAYS_IN_A_MONTH));
    }
}
