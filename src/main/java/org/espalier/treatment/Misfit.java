package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;

/**
 * Something recorded that cannot have happened, by everything else that is recorded.
 *
 * @param on the day of the act or finding that does not fit
 */
public record Misfit(Kind kind, LocalDate on) {

    /** What does not fit. */
    public enum Kind {
        /** What it was done to was not in on that day. */
        NOT_IN,
        /** What was put in is recorded as put in already. */
        PLACED_TWICE,
        /** It lies on another physis or on the other side of the bone. */
        ANOTHER_PLACE,
        /** It is another kind of implant. */
        ANOTHER_IMPLANT,
        SCREW_OUT_ALREADY,
        SCREW_IN_ALREADY,
        /** The physis was seen closed before. */
        MATURE_ALREADY,
        /** Seen closed while an implant is in, and nothing is said of it. */
        IMPLANT_UNSETTLED
    }

    /** What stops a change: what does not fit with it and did fit before. */
    static List<Stop> stops(TreatmentRecord before, TreatmentRecord after) {
        var known = new Derivation(before).misfits();
        return new Derivation(after)
                .misfits().stream()
                        .filter(misfit -> !known.contains(misfit))
                        .map(misfit -> Stop.of(Stop.Reason.of(misfit.kind()), 0))
                        .distinct()
                        .toList();
    }
}
