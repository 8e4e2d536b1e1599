package org.espalier.followup;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** By when children are looked at, and the limits of each site that decide it. */
@Service
@Transactional
public class DueByService {

    private final JdbcLimitsRepository limits;
    private final JdbcVisitRepository visits;
    private final DueDates dueDates;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    DueByService(
            JdbcLimitsRepository limits,
            JdbcVisitRepository visits,
            DueDates dueDates,
            CurrentStaff currentStaff,
            Ids ids,
            Clock clock) {
        this.limits = limits;
        this.visits = visits;
        this.dueDates = dueDates;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /** The limits that hold at the site. */
    public Limits limits(SiteId site) {
        return limits.of(site);
    }

    /** The limits that were signed at the site, the last first; empty where the defaults hold. */
    public List<SignedLimits> signedLimits(SiteId site) {
        return limits.all(site);
    }

    /** Signs limits for the site, from now on. */
    public void signLimits(SiteId site, Limits signed, String reason) {
        limits.add(
                ids.next(),
                site,
                signed,
                reason,
                currentStaff.find().orElse(null),
                clock.instant().atOffset(ZoneOffset.UTC));
    }

    /**
     * How long it takes from look to theatre at the site, in months: the 90th percentile of its records of two years;
     * empty while they are too few to tell.
     */
    public Optional<Double> ownWait(SiteId site) {
        return dueDates.ownWait(site);
    }

    /** Asks the rules again about a child in care, after something new is on record. */
    public void renew(ChildId child) {
        visits.findOpen(child).ifPresent(visit -> renew(visit, dueDates.rules(visit.site())));
    }

    /** The same by rules of its hospital that are known already. */
    void renew(ChildId child, SiteRules rules) {
        visits.findOpen(child).ifPresent(visit -> renew(visit, rules));
    }

    private void renew(Visit visit, SiteRules rules) {
        visits.setDue(visit.id(), dueDates.of(visit.child(), visit.asked(), rules), rules.mark());
    }
}
