package org.espalier.patient;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.espalier.access.AccessLog;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.JdbcFindingRepository.Entry;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What is measured and found on a child over time. Nothing is changed: a later fact stands in place of an earlier one.
 */
@Service
@Transactional
public class ExaminationService {

    private final JdbcChildRepository children;
    private final FindingRepositories findings;
    private final JdbcTibiaVaraStageRepository stages;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    ExaminationService(
            JdbcChildRepository children,
            FindingRepositories findings,
            JdbcTibiaVaraStageRepository stages,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            ApplicationEventPublisher events,
            Clock clock) {
        this.children = children;
        this.findings = findings;
        this.stages = stages;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.events = events;
        this.clock = clock;
    }

    /** Writes a finding down. Sent again with the same id it is kept once. */
    public void record(ChildId child, FactId id, Finding finding) {
        demandLifetime(child, finding.on());
        add(child, id, finding, null, null);
    }

    /** Writes down all that was found at one visit, or nothing of it. Sent again with the same ids it is kept once. */
    public void recordTogether(ChildId child, Map<FactId, Finding> found) {
        found.forEach((id, finding) -> record(child, id, finding));
    }

    /**
     * Writes a finding down in place of an earlier one of the same kind.
     *
     * @return false when somebody else superseded the earlier one meanwhile; nothing is kept then
     */
    public boolean correct(ChildId child, FactId earlier, FactId id, Finding finding, String reason) {
        demandLifetime(child, finding.on());
        return add(child, id, finding, earlier, reason);
    }

    /**
     * Withdraws a fact that should not be on this child; it stays visible as withdrawn.
     *
     * @return false when somebody else superseded it meanwhile; nothing is kept then
     */
    public boolean withdraw(ChildId child, Fact<?> earlier, FactId id, String reason) {
        var finding = earlier.finding();
        if (finding == null) {
            throw new IllegalArgumentException("withdrawn already: " + earlier.id());
        }
        return withdraw(child, finding.getClass(), earlier, id, reason);
    }

    /** All that was measured and found on the child. */
    public Examination of(ChildId child) {
        var found = children.find(child);
        found.ifPresent(one -> log.opened(one.ref(), "examination"));
        return new Examination(
                found,
                findings.all(BodySize.class, child),
                findings.all(BoneAge.class, child),
                findings.all(Diagnosis.class, child),
                findings.all(ClinicalExamination.class, child),
                findings.all(LabResult.class, child),
                findings.all(BoneDisease.class, child),
                findings.all(ImagingReport.class, child),
                findings.all(TibiaVaraStage.class, child));
    }

    /** Stages of tibia vara that two readers of a hospital gave the same film. */
    public List<StagePair> stagePairs(SiteId site) {
        return stages.pairs(site);
    }

    @SuppressWarnings("unchecked")
    private <F extends Finding> boolean add(
            ChildId child, FactId id, F finding, @Nullable FactId earlier, @Nullable String reason) {
        var by = currentStaff.find().orElse(null);
        return told(
                child,
                findings.add(
                        (Class<F>) finding.getClass(),
                        new Entry<>(child, id, finding.on(), finding, by, clock.instant(), earlier, reason)));
    }

    private <F extends Finding> boolean withdraw(
            ChildId child, Class<F> kind, Fact<?> earlier, FactId id, String reason) {
        var by = currentStaff.find().orElse(null);
        return told(
                child,
                findings.add(
                        kind, new Entry<>(child, id, earlier.on(), null, by, clock.instant(), earlier.id(), reason)));
    }

    private boolean told(ChildId child, boolean kept) {
        if (kept) {
            children.find(child).ifPresent(one -> events.publishEvent(new FindingRecorded(child, one.site())));
        }
        return kept;
    }

    private void demandLifetime(ChildId child, LocalDate on) {
        var found = children.find(child).orElseThrow(() -> new IllegalArgumentException("no such child: " + child));
        if (on.isAfter(sites.today(found.site()))) {
            throw new IllegalArgumentException("Not measured before today: " + on);
        }
        found.data().filter(data -> on.isBefore(data.birthDate())).ifPresent(data -> {
            throw new IllegalArgumentException("Measured before birth: " + on);
        });
    }
}
