package org.espalier.patient;

import java.time.Clock;
import java.time.LocalDate;
import org.espalier.access.AccessLog;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteService;
import org.espalier.patient.JdbcFindingRepository.Entry;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What is measured and found on a child over time. Nothing is changed: a later fact stands in place of an earlier one. */
@Service
@Transactional
public class ExaminationService {

    private final JdbcChildRepository children;
    private final JdbcBodySizeRepository sizes;
    private final JdbcBoneAgeRepository boneAges;
    private final JdbcDiagnosisRepository diagnoses;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Clock clock;

    ExaminationService(
            JdbcChildRepository children,
            JdbcBodySizeRepository sizes,
            JdbcBoneAgeRepository boneAges,
            JdbcDiagnosisRepository diagnoses,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Clock clock) {
        this.children = children;
        this.sizes = sizes;
        this.boneAges = boneAges;
        this.diagnoses = diagnoses;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.clock = clock;
    }

    /** Writes a finding down. Sent again with the same id it is kept once. */
    public void record(ChildId child, FactId id, Finding finding) {
        demandLifetime(child, finding.on());
        add(child, id, finding, null, null);
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
        return switch (earlier.finding()) {
            case BodySize size -> sizes.add(this.<BodySize>withdrawal(child, earlier, id, reason));
            case BoneAge age -> boneAges.add(this.<BoneAge>withdrawal(child, earlier, id, reason));
            case Diagnosis diagnosis -> diagnoses.add(this.<Diagnosis>withdrawal(child, earlier, id, reason));
            case null -> throw new IllegalArgumentException("withdrawn already: " + earlier.id());
        };
    }

    /** All that was measured and found on the child. */
    public Examination of(ChildId child) {
        var found = children.find(child);
        found.ifPresent(one -> log.opened(one.ref(), "examination"));
        return new Examination(found, sizes.all(child), boneAges.all(child), diagnoses.all(child));
    }

    private boolean add(ChildId child, FactId id, Finding finding, @Nullable FactId earlier, @Nullable String reason) {
        return switch (finding) {
            case BodySize size -> sizes.add(entry(child, id, size, earlier, reason));
            case BoneAge age -> boneAges.add(entry(child, id, age, earlier, reason));
            case Diagnosis diagnosis -> diagnoses.add(entry(child, id, diagnosis, earlier, reason));
        };
    }

    private <F extends Finding> Entry<F> entry(
            ChildId child, FactId id, F finding, @Nullable FactId earlier, @Nullable String reason) {
        var by = currentStaff.find().orElse(null);
        return new Entry<>(child, id, finding.on(), finding, by, clock.instant(), earlier, reason);
    }

    private <F extends Finding> Entry<F> withdrawal(ChildId child, Fact<?> earlier, FactId id, String reason) {
        var by = currentStaff.find().orElse(null);
        return new Entry<>(child, id, earlier.on(), null, by, clock.instant(), earlier.id(), reason);
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
