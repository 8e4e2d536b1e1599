package org.espalier.reading;

import java.util.Optional;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;

/**
 * What became of a quantity from an earlier film to a later one.
 *
 * @param difference later less earlier, in the quantity's unit and sign
 * @param judged whether it is more than reader error and positioning together; empty where no limit is established
 */
public record Change(Quantity quantity, double difference, Optional<Judged> judged) {

    /** The limit is known up to this flexion. */
    private static final double MOST_FLEXION = 60;

    /**
     * A change held against its limit.
     *
     * @param flexionRecorded whether the flexion of both knees was recorded; else both count as straight
     */
    public record Judged(ChangeLimit limit, ChangeLimit.Verdict verdict, boolean flexionRecorded) {}

    /**
     * The change between two values of a quantity; empty between a standing film and a lying one, which are two ways.
     */
    public static Optional<Change> between(
            Side side, Quantity quantity, double before, FilmTaken then, double after, FilmTaken now) {
        if (then.lay() != now.lay()) {
            return Optional.empty();
        }
        int larger = Math.max(then.flexion(side).orElse(0), now.flexion(side).orElse(0));
        var reckoned = Angle.ofDegrees(Math.clamp(larger, ChangeLimit.STRAIGHT.degrees(), MOST_FLEXION));
        var judged = ChangeLimit.of(quantity, reckoned)
                .map(limit -> new Judged(
                        limit,
                        limit.of(Angle.ofDegrees(before), Angle.ofDegrees(after)),
                        then.flexion(side).isPresent() && now.flexion(side).isPresent()));
        return Optional.of(new Change(quantity, after - before, judged));
    }

    /** Whether it is within reader error and positioning together. */
    public boolean isUnmeasurable() {
        return judged.filter(one -> one.verdict() == ChangeLimit.Verdict.NO_MEASURABLE_CHANGE)
                .isPresent();
    }
}
