package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.LimbForecast;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.ReachingTime;
import org.espalier.science.forecast.Spread;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.quantity.Angle;

/**
 * Where the angle beside one physis is going while its plate stays in. Everything is asked by the day and in joint
 * angles.
 */
public final class Forecast implements Outlook {

    private static final double[] SHOWN = {0.05, 0.25, 0.5, 0.75, 0.95};

    private final ForecastInputs inputs;
    private final boolean placed;
    private final TetherForecast tether;
    private final ReachingTime reaching;

    private Forecast(ForecastInputs inputs, boolean placed, TetherForecast tether) {
        this.inputs = inputs;
        this.placed = placed;
        this.tether = tether;
        reaching = tether.reachingTarget();
    }

    static Forecast of(ForecastInputs inputs, boolean placed, CentreRates rates) {
        return new Forecast(inputs, placed, TetherForecast.of(inputs.toPhysis(), rates));
    }

    ForecastInputs inputs() {
        return inputs;
    }

    /** Whether the plate is in; otherwise it is asked what one placed on {@link #plateOn} would do. */
    public boolean isPlaced() {
        return placed;
    }

    /** The day the plate was placed, or would be. */
    public LocalDate plateOn() {
        return inputs.plateOn();
    }

    /** The days of the films it knows, the earliest first. */
    public List<LocalDate> films() {
        return inputs.films().stream().map(ForecastInputs.Film::on).toList();
    }

    public PhysisSite site() {
        return inputs.site();
    }

    public Cause cause() {
        return inputs.cause();
    }

    /** Whether rates of the diagnosis itself are known; else those of idiopathic limbs stand in. */
    public boolean isCauseStudied() {
        return inputs.isCauseStudied();
    }

    /** What the plate corrects, by the side it lies on. */
    public Deformity corrects() {
        return inputs.deformity();
    }

    /** The joint angle aimed at. */
    public Angle target() {
        return new Angle(inputs.targetDegrees());
    }

    /** The day from which it looks ahead: the last film with the plate, or the day the plate was placed. */
    public LocalDate from() {
        return inputs.day(tether.from());
    }

    /** After that day nothing grows any more. */
    public LocalDate growthEnds() {
        return inputs.day(tether.growthEnds());
    }

    /** How the angle is spread on a day; before {@link #from} as on that day. */
    public AngleSpread angle(LocalDate day) {
        return AngleSpread.of(spread(day).quantiles(SHOWN));
    }

    Spread spread(LocalDate day) {
        return joint(tether.degreesLeft(months(day)));
    }

    /** How a film taken on a day will read, its own error included. */
    public AngleSpread film(LocalDate day) {
        return AngleSpread.of(joint(tether.film(months(day))).quantiles(SHOWN));
    }

    /** When the target is reached. */
    public Arrival arrival() {
        return new Arrival(reached(0.05), reached(0.5), reached(0.95), reaching.never());
    }

    /** The chance, 0 to 1, that the angle is more than so many degrees past its target on a day. */
    public double chancePast(LocalDate day, double degrees) {
        return tether.degreesLeft(months(day)).below(-degrees);
    }

    /** How far past its target the angle is on a day. */
    public Past past(LocalDate day) {
        var left = tether.degreesLeft(months(day));
        return new Past(corrects().opposite(), beyond(left, 0.5), beyond(left, 0.95), beyond(left, 0.05));
    }

    private static double beyond(Spread left, double probability) {
        return Math.max(0, -left.quantile(probability));
    }

    /** Degrees by which the angle is expected to change between two days, not below 0. */
    public double change(LocalDate from, LocalDate to) {
        double earlier = tether.degreesLeft(months(from)).mean();
        return Math.abs(earlier - tether.degreesLeft(months(to)).mean());
    }

    /** The chance that the physis does not respond to the plate, 0 to 1. */
    public double noResponse() {
        return tether.noResponse();
    }

    /** The chance that its hardware has failed by now, 0 to 1. */
    public double hardwareFailed() {
        return tether.hardwareFailed();
    }

    /** When a screw was seen broken, if one was. */
    public Optional<LocalDate> seenBroken() {
        return Optional.ofNullable(inputs.brokenOn());
    }

    /** The plate at work, as sums with another bone ask for it. */
    LimbForecast.Tether tether(LocalDate today) {
        return new LimbForecast.Tether(corrects(), target(), tether, months(today));
    }

    private Spread joint(Spread left) {
        double perDegree = corrects().jointAngle(site(), 1, target()).degrees() - inputs.targetDegrees();
        return left.scaled(perDegree, inputs.targetDegrees());
    }

    private Optional<LocalDate> reached(double probability) {
        OptionalDouble months = reaching.quantile(probability);
        return months.isPresent() ? Optional.of(inputs.day(months.getAsDouble())) : Optional.empty();
    }

    private double months(LocalDate day) {
        return inputs.months(day);
    }
}
