package org.espalier.course;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.film.FilmId;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/**
 * One quantity of one limb on one film, by the latest reading that stands.
 *
 * @param doubtful whether the knee was so flexed that the value says little of the bones
 * @param since against the film before, read in the same way; empty for the first
 */
public record CoursePoint(
        Side side,
        Quantity quantity,
        LocalDate day,
        FilmId film,
        Reading reading,
        double value,
        boolean doubtful,
        Optional<Change> since) {

    /**
     * The change since the film before.
     *
     * @param from the day of the film before
     * @param difference later less earlier, in the quantity's unit and sign
     * @param judged whether it is more than reader error and positioning together; empty where no limit is established
     */
    public record Change(LocalDate from, double difference, Optional<Judged> judged) {

        /** Whether it is within reader error and positioning together. */
        public boolean isUnmeasurable() {
            return judged.filter(one -> one.verdict() == ChangeLimit.Verdict.NO_MEASURABLE_CHANGE)
                    .isPresent();
        }
    }

    /**
     * A change held against its limit.
     *
     * @param flexionRecorded whether the flexion of both knees was recorded; else both count as straight
     */
    public record Judged(ChangeLimit limit, ChangeLimit.Verdict verdict, boolean flexionRecorded) {}
}
