package org.espalier.outcomes;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.espalier.science.statistics.CumulativeIncidence;
import org.espalier.science.statistics.CumulativeIncidence.Followed;
import org.espalier.science.statistics.Proportion;
import org.espalier.science.statistics.Quantile;

/**
 * What came of the growth plates at one hospital that were held from a day of the span on.
 *
 * @param plates those that count
 * @param leftOut how many do not, and why
 * @param looks how looks were kept that fell due in the span
 */
public record Results(Span span, List<PlateCourse> plates, Map<LeftOut, Integer> leftOut, Looks looks) {

    /** Of fewer limbs nothing can be concluded. A choice of this house. */
    public static final int FEW = 10;

    public Results {
        plates = List.copyOf(plates);
        leftOut = Map.copyOf(leftOut);
    }

    static Results of(Span span, List<PlateCourse> all, Looks looks) {
        var leftOut = new EnumMap<LeftOut, Integer>(LeftOut.class);
        all.stream()
                .filter(plate -> span.holds(plate.plateOn()))
                .flatMap(plate -> plate.leftOut().stream())
                .forEach(why -> leftOut.merge(why, 1, Integer::sum));
        return new Results(span, PlateCourse.counted(all, span), leftOut, looks);
    }

    public int children() {
        return (int) plates.stream().map(PlateCourse::child).distinct().count();
    }

    public int limbs() {
        return (int) plates.stream()
                .map(plate -> List.of(plate.child(), plate.physis().side()))
                .distinct()
                .count();
    }

    public boolean isFew() {
        return limbs() < FEW;
    }

    /** How many ended so. */
    public int ended(Came came) {
        return count(plate -> plate.came().equals(Optional.of(came)));
    }

    public int running() {
        return count(plate -> plate.came().isEmpty());
    }

    /** Of how many a film told where they stood when they were let go. */
    public int measured() {
        return count(plate -> plate.came().filter(Came::isMeasured).isPresent());
    }

    /** Cumulative incidence of each end by months since the plate; running ones are censored. Empty without plates. */
    public Optional<CumulativeIncidence<Came>> curve() {
        var followed = plates.stream()
                .map(plate -> new Followed<>(plate.months(), plate.came()))
                .toList();
        return followed.isEmpty() ? Optional.empty() : Optional.of(CumulativeIncidence.of(followed));
    }

    /** How many of those that were measured stood so. */
    public Optional<Proportion> letGo(Came came) {
        return proportion(ended(came), measured());
    }

    /** How far past their targets those stood that had gone past the band, in degrees. */
    public List<Double> pastTarget() {
        return plates.stream()
                .filter(plate -> plate.came().equals(Optional.of(Came.OVERSHOT)))
                .flatMap(plate -> plate.past().stream().boxed())
                .sorted()
                .toList();
    }

    public Optional<Double> medianPastTarget() {
        var past = pastTarget();
        return past.isEmpty() ? Optional.empty() : Optional.of(Quantile.of(past, 0.5));
    }

    /** How many had drifted back by two years, of those filmed then. */
    public Optional<Proportion> drifted() {
        return proportion(count(plate -> plate.drifted().orElse(false)), count(plate -> plate.drifted()
                .isPresent()));
    }

    /** Of how many it is so two years after. */
    public int after(After after) {
        return count(plate -> plate.after() == after);
    }

    /** Plates after which a complication was written down. */
    public Optional<Proportion> complications() {
        return proportion(count(PlateCourse::complication), plates.size());
    }

    /** Plates after which the child came back to theatre unplanned. */
    public Optional<Proportion> back() {
        return proportion(count(PlateCourse::back), plates.size());
    }

    private int count(Predicate<PlateCourse> which) {
        return (int) plates.stream().filter(which).count();
    }

    private static Optional<Proportion> proportion(int count, int of) {
        return of == 0 ? Optional.empty() : Optional.of(new Proportion(count, of));
    }
}
