package org.espalier.followup;

import java.util.Optional;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Component;

/** Works out by when a child is to be looked at, from what is on record this moment. */
@Component
class DueDates {

    private final CareReader care;
    private final JdbcLimitsRepository limits;

    DueDates(CareReader care, JdbcLimitsRepository limits) {
        this.care = care;
        this.limits = limits;
    }

    /** By when to look at the child next; what was asked for counts as a rule of its own. */
    Due of(ChildId child, Optional<Visit.Asked> asked) {
        var facts = care.read(child, asked.map(Visit.Asked::by));
        return DueBy.of(facts, limits.of(care.site(child)));
    }
}
