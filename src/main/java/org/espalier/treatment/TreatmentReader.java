package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Optional;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Component;

/** Reads a child's treatment from where its facts are kept. */
@Component
class TreatmentReader {

    private final JdbcProcedureRepository procedures;
    private final JdbcTreatmentFactRepository facts;
    private final JdbcReversalRepository reversals;
    private final PatientService patients;
    private final SiteService sites;

    TreatmentReader(
            JdbcProcedureRepository procedures,
            JdbcTreatmentFactRepository facts,
            JdbcReversalRepository reversals,
            PatientService patients,
            SiteService sites) {
        this.procedures = procedures;
        this.facts = facts;
        this.reversals = reversals;
        this.patients = patients;
        this.sites = sites;
    }

    TreatmentRecord record(ChildId child) {
        return new TreatmentRecord(
                procedures.all(child),
                facts.all(FactTable.PLANS, child),
                facts.all(FactTable.TARGETS, child),
                facts.all(FactTable.FINDINGS, child),
                facts.all(FactTable.MATURITIES, child),
                facts.all(FactTable.CARE_STEPS, child),
                facts.all(FactTable.COMPLICATIONS, child),
                facts.all(FactTable.CHECKS, child));
    }

    /** What follows from the record today. */
    Treatment treatment(ChildId child, SiteId site, TreatmentRecord record) {
        var followed = patients.limbs(child).stream()
                .flatMap(limb -> limb.physes().stream())
                .map(PhysisKey::of)
                .toList();
        return Treatment.of(child, site, sites.today(site), record, followed, reversals.all(child));
    }

    /** The hospital that has care; empty when the caller may not see the child. */
    Optional<SiteId> site(ChildId child) {
        return procedures.site(child);
    }

    LocalDate today(SiteId site) {
        return sites.today(site);
    }
}
