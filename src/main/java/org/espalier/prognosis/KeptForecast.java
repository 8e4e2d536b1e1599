package org.espalier.prognosis;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.espalier.science.forecast.FiveQuantiles;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;

/**
 * A forecast as it was given, to be held against what came. Angles are told as degrees left to the target it was given
 * for: + while still deformed, − beyond it.
 */
public final class KeptForecast {

    private final PhysisKey physis;
    private final ForecastInputs inputs;
    private final KeptOutcome outcome;
    private final Instant at;

    KeptForecast(PhysisKey physis, ForecastInputs inputs, KeptOutcome outcome, Instant at) {
        this.physis = physis;
        this.inputs = inputs;
        this.outcome = outcome;
        this.at = at;
    }

    public PhysisKey physis() {
        return physis;
    }

    public LocalDate plateOn() {
        return inputs.plateOn();
    }

    /** The day it looks ahead from; it knows no later film. */
    public LocalDate from() {
        return outcome.from();
    }

    /** When it was written down. */
    public Instant at() {
        return at;
    }

    /** The chance, 0 to 1, that the target would never be reached. */
    public double never() {
        return outcome.never();
    }

    /** A joint angle that was read, as degrees left to its target. */
    public double left(double jointDegrees) {
        return inputs.deformity()
                .degreesLeft(inputs.site(), new Angle(jointDegrees), new Angle(inputs.targetDegrees()));
    }

    /** What it said a film of a day would read; empty before its first day and after its last. */
    public Optional<FiveQuantiles> film(LocalDate day) {
        var films = outcome.films();
        return IntStream.range(0, films.size() - 1)
                .filter(i -> !day.isBefore(films.get(i).on())
                        && !day.isAfter(films.get(i + 1).on()))
                .boxed()
                .findFirst()
                .map(i -> left(films.get(i))
                        .towards(
                                left(films.get(i + 1)),
                                part(films.get(i).on(), day, films.get(i + 1).on())));
    }

    /** Where a straight line through the last two films that it knew comes to on a day; empty without two. */
    public OptionalDouble line(LocalDate day) {
        List<ForecastInputs.Film> known = inputs.films();
        if (known.size() < 2) {
            return OptionalDouble.empty();
        }
        var first = known.get(known.size() - 2);
        var last = known.getLast();
        if (!first.on().isBefore(last.on())) {
            return OptionalDouble.empty();
        }
        double onward = part(first.on(), day, last.on());
        return OptionalDouble.of(left(first.degrees()) + onward * (left(last.degrees()) - left(first.degrees())));
    }

    private FiveQuantiles left(KeptOutcome.KeptAngle angle) {
        return FiveQuantiles.of(
                left(angle.low90()),
                left(angle.low50()),
                left(angle.middle()),
                left(angle.high50()),
                left(angle.high90()));
    }

    private static double part(LocalDate from, LocalDate day, LocalDate to) {
        return (double) ChronoUnit.DAYS.between(from, day) / ChronoUnit.DAYS.between(from, to);
    }
}
