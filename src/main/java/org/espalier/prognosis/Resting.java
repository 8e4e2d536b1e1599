package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.science.forecast.AfterRelease;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.ParkedPlate;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.Spread;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.quantity.Angle;

/**
 * Where the angle beside a physis is going that was held and no longer is: it stays, or part of the deformity returns;
 * with a plate left in and a screw out it may go on turning besides.
 */
public final class Resting implements Outlook {

    private static final double[] SHOWN = {0.05, 0.25, 0.5, 0.75, 0.95};

    private final ForecastInputs inputs;
    private final LocalDate from;
    private final AfterRelease after;
    private final Optional<ParkedPlate> parked;

    private Resting(ForecastInputs inputs, LocalDate from, AfterRelease after, Optional<ParkedPlate> parked) {
        this.inputs = inputs;
        this.from = from;
        this.after = after;
        this.parked = parked;
    }

    /** A plate that held, and no longer does. */
    record Held(ForecastInputs inputs, LocalDate to) {}

    /**
     * @param film the last film since; empty while there is none
     * @param parked whether the plate is still in, a screw out
     */
    static Resting of(Held held, Optional<FilmAngle> film, boolean parked, CentreRates rates) {
        var inputs = held.inputs;
        var tether = TetherForecast.of(inputs.toPhysis(), rates);
        double months = inputs.months(held.to);
        var then = tether.degreesLeft(months);
        double corrected = tether.degreesLeft(0).mean() - then.mean();
        var from = film.map(FilmAngle::on).orElse(held.to);
        var after = AfterRelease.of(
                inputs.sex(),
                inputs.yearsAtPlate() + inputs.months(from) / 12,
                inputs.cause(),
                months > 0 ? Math.max(0, corrected) / months * 12 : 0,
                film.map(read -> inputs.deformity()
                                .degreesLeft(inputs.site(), new Angle(read.value()), new Angle(inputs.targetDegrees())))
                        .orElse(then.mean()),
                film.isPresent() ? rates.filmError(inputs.site(), inputs.cause()) : then.standardDeviation());
        return new Resting(
                inputs, from, after, parked ? Optional.of(goingOn(held, film, after, rates)) : Optional.empty());
    }

    /** A parked plate that goes on starts from what the last film shows, not from what was foreseen before it. */
    private static ParkedPlate goingOn(Held held, Optional<FilmAngle> film, AfterRelease after, CentreRates rates) {
        var seen =
                film.map(read -> held.inputs.withFilm(read.on(), read.value())).orElse(held.inputs);
        var from = film.map(FilmAngle::on).orElse(held.to);
        return new ParkedPlate(after, TetherForecast.of(seen.toPhysis(), rates), held.inputs.months(from));
    }

    /** Whether a plate is still in with a screw out. */
    public boolean isParked() {
        return parked.isPresent();
    }

    /** The day from which it looks ahead: the last film since, or the day of release. */
    public LocalDate from() {
        return from;
    }

    public PhysisSite site() {
        return inputs.site();
    }

    /** The deformity that was corrected and may return. */
    public Deformity corrected() {
        return inputs.deformity();
    }

    public Angle target() {
        return new Angle(inputs.targetDegrees());
    }

    /** The chance that part of the deformity returns, 0 to 1, by published series. */
    public double chanceOfReturn() {
        return after.chance();
    }

    /** The chance that a parked plate goes on turning the joint, 0 to 1; 0 where none is in. */
    public double chanceOfGoingOn() {
        return isParked() ? ParkedPlate.GOES_ON : 0;
    }

    /** How the joint angle is spread on a day; before {@link #from} as on that day. */
    public AngleSpread angle(LocalDate day) {
        return AngleSpread.of(spread(day).quantiles(SHOWN));
    }

    Spread spread(LocalDate day) {
        double months = Math.max(0, ForecastInputs.monthsBetween(from, day));
        Spread left = parked.map(plate -> plate.degreesLeft(months)).orElseGet(() -> after.degreesLeft(months));
        double perDegree = corrected().jointAngle(site(), 1, target()).degrees() - inputs.targetDegrees();
        return left.scaled(perDegree, inputs.targetDegrees());
    }
}
