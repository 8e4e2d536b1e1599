package org.espalier.science.alignment;

import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.statistics.Interval;

/**
 * What one study found in children of one age and sex by one method. It describes a population; it is no target.
 *
 * @param study who found it
 * @param quantity what it is of, with unit and sign
 * @param method how it was measured
 * @param mean empty where none is printed
 * @param standardDeviation of the children, above 0; empty where none is printed
 * @param range what the study calls normal or 95 % of its children; empty where none is printed
 * @param note what has to stand beside it; empty if nothing
 * @param checking how far the numbers have been checked
 */
public record Norm(
        NormStudy study,
        NormQuantity quantity,
        NormMethod method,
        OptionalDouble mean,
        OptionalDouble standardDeviation,
        Optional<Interval> range,
        String note,
        NormalRange.Checking checking) {

    /**
     * How many standard deviations a value lies from the mean; no z-score without a printed standard deviation.
     *
     * @param value measured by the same method, in the quantity's unit and sign
     */
    public OptionalDouble z(double value) {
        return mean.isPresent() && standardDeviation.isPresent()
                ? OptionalDouble.of((value - mean.getAsDouble()) / standardDeviation.getAsDouble())
                : OptionalDouble.empty();
    }
}
