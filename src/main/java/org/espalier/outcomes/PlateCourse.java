package org.espalier.outcomes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.cost.DiagnosisGroup;
import org.espalier.patient.ChildId;
import org.espalier.treatment.PhysisKey;

/**
 * One growth plate from the day something held it to the day nothing did, it broke, or growth ended.
 *
 * @param came empty while it runs
 * @param to the day it ended; of one that runs the day up to which it was followed
 * @param past degrees past its target by the last film of the half year before that day, − short of it
 * @param drift degrees it went back towards the deformity by the film two years after
 * @param complication whether one was written down after it, as the last plate before
 * @param back whether the child came back to theatre for it unplanned
 * @param never the chance first foretold that its target would never be reached
 * @param reachedOn the day of the first film within the band of the target or past it
 */
public record PlateCourse(
        ChildId child,
        PhysisKey physis,
        LocalDate plateOn,
        Optional<LeftOut> leftOut,
        Optional<Came> came,
        LocalDate to,
        OptionalDouble past,
        After after,
        OptionalDouble drift,
        boolean complication,
        boolean back,
        CaseMix mix,
        OptionalDouble never,
        Optional<LocalDate> reachedOn) {

    /**
     * What makes children differ before any care does, as it was when it was placed.
     *
     * @param growthYears years of growth left; empty when the child's sex is not known
     */
    public record CaseMix(DiagnosisGroup diagnosis, int ageYears, OptionalDouble growthYears) {}

    /** The order that decides which plate stands for a child or a limb: the first, the right before the left. */
    static final Comparator<PlateCourse> FIRST = Comparator.comparing(PlateCourse::plateOn)
            .thenComparing(plate -> plate.physis().side())
            .thenComparing(plate -> plate.physis().bone())
            .thenComparing(plate -> plate.physis().end());

    private static final double DAYS_OF_A_MONTH = 30.4375;

    boolean counts(Span span) {
        return leftOut.isEmpty() && span.holds(plateOn);
    }

    /** Months it was followed. */
    public double months() {
        return ChronoUnit.DAYS.between(plateOn, to) / DAYS_OF_A_MONTH;
    }

    /** Whether it drifted back; empty where no film tells. */
    Optional<Boolean> drifted() {
        return drift.isPresent() ? Optional.of(drift.getAsDouble() > After.DRIFT_DEGREES) : Optional.empty();
    }

    /** Whether the target was reached or never will be by this plate; empty while neither is known. */
    Optional<Boolean> neverReached() {
        return reachedOn.isPresent()
                ? Optional.of(false)
                : came.filter(one -> one != Came.NOT_FILMED).map(one -> true);
    }

    /** The day on which that was known. */
    LocalDate settledOn() {
        return reachedOn.orElse(to);
    }

    /** Those that count of plates placed in the span. */
    static List<PlateCourse> counted(List<PlateCourse> all, Span span) {
        return all.stream().filter(plate -> plate.counts(span)).toList();
    }
}
