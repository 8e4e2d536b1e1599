package org.espalier.outcomes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.espalier.patient.ChildId;
import org.espalier.science.statistics.Proportion;
import org.espalier.science.statistics.Quantile;

/**
 * How looks were kept that fell due: by the last good day of the first visit since the child was last seen, whatever
 * was moved, called off or missed on the way.
 *
 * @param inTime of those that fell due, how many children were seen by the day; empty when none fell due
 * @param daysLate of those that came later
 * @param away how many have not come yet
 * @param leftOut how many ended with care instead
 */
public record Looks(Optional<Proportion> inTime, List<Double> daysLate, int away, int leftOut) {

    private static final double WORST_TENTH = 0.9;

    /** What became of a visit. */
    enum End {
        ARRIVED,
        NOT_BROUGHT,
        CANCELLED,
        CARE_ENDED
    }

    /** A visit as it stands. */
    record Visited(ChildId child, LocalDate lookBy, Optional<End> end, Optional<LocalDate> on) {

        private boolean goesOn() {
            return end.filter(one -> one == End.NOT_BROUGHT || one == End.CANCELLED)
                    .isPresent();
        }
    }

    /** A look from its first visit to what became of it. */
    private record Look(LocalDate due, Visited last) {

        boolean isSeen() {
            return last.end().equals(Optional.of(End.ARRIVED));
        }

        long daysLate() {
            return ChronoUnit.DAYS.between(due, last.on().orElseThrow());
        }
    }

    /** @param visits each child's in their order */
    static Looks of(List<Visited> visits, Span span, LocalDate today) {
        var due = looks(visits).stream()
                .filter(look -> span.holds(look.due()) && look.due().isBefore(today))
                .toList();
        var seen = due.stream().filter(Look::isSeen).toList();
        int inTime = (int) seen.stream().filter(look -> look.daysLate() <= 0).count();
        int away =
                (int) due.stream().filter(look -> look.last().end().isEmpty()).count();
        int told = seen.size() + away;
        return new Looks(
                told == 0 ? Optional.empty() : Optional.of(new Proportion(inTime, told)),
                seen.stream()
                        .filter(look -> look.daysLate() > 0)
                        .map(look -> (double) look.daysLate())
                        .toList(),
                away,
                due.size() - told);
    }

    private static List<Look> looks(List<Visited> visits) {
        var looks = new ArrayList<Look>();
        Optional<Visited> first = Optional.empty();
        for (var visit : visits) {
            var begun = first.filter(one -> one.child().equals(visit.child())).orElse(visit);
            if (visit.goesOn()) {
                first = Optional.of(begun);
            } else {
                looks.add(new Look(begun.lookBy(), visit));
                first = Optional.empty();
            }
        }
        return looks;
    }

    public Optional<Double> medianLate() {
        return late(0.5);
    }

    /** One in ten of those that came late came this late or later. */
    public Optional<Double> worstTenthLate() {
        return late(WORST_TENTH);
    }

    private Optional<Double> late(double part) {
        return daysLate.isEmpty() ? Optional.empty() : Optional.of(Quantile.of(daysLate, part));
    }
}
