package org.espalier.outcomes;

import java.util.List;
import org.espalier.access.AccessLog;
import org.espalier.access.ChildRef;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * How results compare, and whether forecasts are honest. Of the reader's own hospitals everything, of others how many
 * and never who.
 */
@Service
@Transactional
public class OutcomeService {

    private final JdbcOutcomeRepository plates;
    private final JdbcJudgedRepository judged;
    private final OutcomeJobs.Asking jobs;
    private final SiteService sites;
    private final CurrentStaff staff;
    private final AccessLog log;

    OutcomeService(
            JdbcOutcomeRepository plates,
            JdbcJudgedRepository judged,
            OutcomeJobs.Asking jobs,
            SiteService sites,
            CurrentStaff staff,
            AccessLog log) {
        this.plates = plates;
        this.judged = judged;
        this.jobs = jobs;
        this.sites = sites;
        this.staff = staff;
        this.log = log;
    }

    /**
     * A plate behind a figure.
     *
     * @param here whether the hospital has care of the child still, so that its course can be opened
     */
    public record Listed(PlateCourse plate, boolean here) {}

    /** The hospitals whose outcomes the reader answers for. */
    public List<Site> mine() {
        return sites.mine().stream()
                .filter(site -> staff.has(Role.SURGEON, site.id()) || staff.has(Role.AUDITOR, site.id()))
                .toList();
    }

    /** What came of the plates that a hospital placed in the span. */
    public Results results(SiteId site, Span span) {
        return Results.of(
                span,
                plates.placed(site, span).stream()
                        .map(JdbcOutcomeRepository.Kept::plate)
                        .toList(),
                Looks.of(judged.looks(site), span, sites.today(site)));
    }

    /** The plates behind these figures, by the day they were placed. */
    public List<Listed> plates(SiteId site, Span span) {
        var placed = plates.placed(site, span);
        log.listed(
                "outcomes",
                placed.stream()
                        .map(kept -> new ChildRef(site, kept.plate().child().value()))
                        .distinct()
                        .toList());
        return placed.stream()
                .map(kept -> new Listed(kept.plate(), kept.here()))
                .toList();
    }

    /** The hospitals of the network side by side, in the order of their names. */
    public Comparison compared(Measure measure, Span span) {
        var counts = plates.counts(span);
        var mine = mine().stream().map(Site::id).toList();
        return new Comparison(
                measure,
                sites.all().stream()
                        .filter(site -> mine.contains(site.id())
                                || counts.stream()
                                        .anyMatch(count -> count.site().equals(site.id())))
                        .map(site -> HospitalCounts.of(
                                site.id(),
                                mine.contains(site.id()),
                                counts.stream()
                                        .filter(count -> count.site().equals(site.id()))
                                        .toList()))
                        .toList());
    }

    /** How what was foretold at a hospital fared. */
    public Honesty honesty(SiteId site) {
        return Honesty.of(judged.all(site), plates.all(site));
    }

    /** Asks that a hospital's outcomes be told anew from its records. */
    public void renew(SiteId site) {
        if (mine().stream().noneMatch(one -> one.id().equals(site))) {
            throw new IllegalArgumentException("no hospital of the caller's: " + site);
        }
        jobs.renew(site);
    }
}
