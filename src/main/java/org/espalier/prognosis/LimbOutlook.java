package org.espalier.prognosis;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.espalier.science.forecast.LimbForecast;
import org.espalier.science.forecast.Spread;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/**
 * Where a whole limb is going by femur and tibia together: HKA with the knee's laxity as last read, and bony HKA, which
 * is mLDFA less mMPTA, without it. Positive in varus.
 */
public final class LimbOutlook {

    /** Joint lines outside these are pointed out. */
    public static final Angle LEAST_JOINT_LINE = new Angle(85);

    /** As {@link #LEAST_JOINT_LINE}. */
    public static final Angle GREATEST_JOINT_LINE = new Angle(90);

    private static final double EARLIEST = 0.05;
    private static final double MIDDLE = 0.5;
    private static final double LATEST = 0.95;
    private static final double[] SHOWN = {EARLIEST, 0.25, MIDDLE, 0.75, LATEST};

    private final Side side;
    private final LocalDate today;
    private final LimbForecast bones;
    private final Angle jlca;
    private final LocalDate ends;

    /**
     * @param jlca the joint's opening as last read, + laterally
     * @param ends after that day nothing turns
     */
    LimbOutlook(Side side, LocalDate today, LimbForecast bones, Angle jlca, LocalDate ends) {
        this.side = side;
        this.today = today;
        this.bones = bones;
        this.jlca = jlca;
        this.ends = ends;
    }

    /**
     * When the limb is straight, and what it then looks like.
     *
     * @param day in the middle
     * @param earliest one in twenty is straight earlier
     * @param latest nineteen in twenty are straight by then; empty where more than one in twenty never are
     * @param never the chance that it is not by the end of growth, 0 to 1
     * @param femur mLDFA in the middle on that day
     * @param tibia mMPTA in the middle on that day
     */
    public record Straight(
            LocalDate day, LocalDate earliest, Optional<LocalDate> latest, double never, Angle femur, Angle tibia) {

        /** Whether a joint line lies outside 85 to 90 degrees then. */
        public boolean isSlanted() {
            return isOutside(femur) || isOutside(tibia);
        }

        private static boolean isOutside(Angle angle) {
            return angle.compareTo(LEAST_JOINT_LINE) < 0 || angle.compareTo(GREATEST_JOINT_LINE) > 0;
        }
    }

    public Side side() {
        return side;
    }

    /** HKA on a day from today on, laxity as last read. */
    public AngleSpread hka(LocalDate day) {
        return AngleSpread.of(deviation(day, jlca).quantiles(SHOWN));
    }

    /** Bony HKA on a day from today on. */
    public AngleSpread bonyHka(LocalDate day) {
        return AngleSpread.of(deviation(day, Angle.ZERO).quantiles(SHOWN));
    }

    /** When HKA is 0; empty where in the middle it never is. */
    public Optional<Straight> straight() {
        return straight(jlca);
    }

    /** When bony HKA is 0. */
    public Optional<Straight> bonyStraight() {
        return straight(Angle.ZERO);
    }

    /** Whether HKA is 0 or past it already, and led further from it. */
    public boolean isLedAway() {
        return isLedAway(jlca);
    }

    /** Whether bony HKA is 0 or past it already, and led further from it. */
    public boolean isBonyLedAway() {
        return isLedAway(Angle.ZERO);
    }

    /** After that day nothing turns any more. */
    public LocalDate ends() {
        return ends;
    }

    /** The limb if the femur's plate came out today; empty unless the femur has one. */
    public Optional<LimbOutlook> ifFemurOut() {
        return bones.femur().tether().map(_ -> with(bones.withoutFemurPlate()));
    }

    /** The limb if the tibia's plate came out today; empty unless the tibia has one. */
    public Optional<LimbOutlook> ifTibiaOut() {
        return bones.tibia().tether().map(_ -> with(bones.withoutTibiaPlate()));
    }

    /** Whether a plate turns one of its bones. */
    public boolean isHeld() {
        return bones.femur().tether().isPresent() || bones.tibia().tether().isPresent();
    }

    private LimbOutlook with(LimbForecast others) {
        return new LimbOutlook(side, today, others, jlca, ends);
    }

    private Spread deviation(LocalDate day, Angle opening) {
        return bones.hka(months(day), opening);
    }

    private double months(LocalDate day) {
        return Math.max(0, ForecastInputs.monthsBetween(today, day));
    }

    private boolean isLedAway(Angle opening) {
        double now = deviation(today, opening).mean();
        double last = deviation(ends, opening).mean();
        return now * last > 0 && Math.abs(last) > Math.abs(now);
    }

    private Optional<Straight> straight(Angle opening) {
        double sign = Math.signum(deviation(today, opening).mean());
        ToDoubleFunction<LocalDate> reached = day -> {
            double below = deviation(day, opening).below(0);
            return sign > 0 ? below : 1 - below;
        };
        return first(reached, MIDDLE)
                .map(day -> new Straight(
                        day,
                        first(reached, EARLIEST).orElse(day),
                        first(reached, LATEST),
                        1 - reached.applyAsDouble(ends),
                        new Angle(bones.femurAngle(months(day)).quantile(MIDDLE)),
                        new Angle(bones.tibiaAngle(months(day)).quantile(MIDDLE))));
    }

    /** The first day on which the chance is as great, by halving: it only grows while plates stay in. */
    private Optional<LocalDate> first(ToDoubleFunction<LocalDate> chance, double wanted) {
        if (chance.applyAsDouble(ends) < wanted) {
            return Optional.empty();
        }
        long before = -1;
        long reached = Math.max(0, ChronoUnit.DAYS.between(today, ends));
        while (reached - before > 1) {
            long middle = (before + reached) / 2;
            boolean asGreat = chance.applyAsDouble(today.plusDays(middle)) >= wanted;
            before = asGreat ? before : middle;
            reached = asGreat ? middle : reached;
        }
        return Optional.of(today.plusDays(reached));
    }
}
