package org.espalier.followup;

import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Component;

/** Works out by when a child is to be looked at, from what is on record this moment. */
@Component
class DueDates {

    private final CareReader care;

    DueDates(CareReader care) {
        this.care = care;
    }

    /** By when to look at the child next; what was asked for counts as a rule of its own. */
    Due of(ChildId child, Optional<Visit.Asked> asked) {
        return of(child, asked, rules(care.site(child)));
    }

    /** The same by the rules of its hospital, where they are known already. */
    Due of(ChildId child, Optional<Visit.Asked> asked, SiteRules rules) {
        return DueBy.of(care.read(child, asked.map(Visit.Asked::by), rules.waitMonths()), rules.limits());
    }

    /** What the dates of a hospital rest on now. */
    SiteRules rules(SiteId site) {
        return care.rules(site);
    }

    /** The hospital's own wait from look to theatre, in months; empty while its records are too few. */
    Optional<Double> ownWait(SiteId site) {
        return care.ownWait(site);
    }
}
