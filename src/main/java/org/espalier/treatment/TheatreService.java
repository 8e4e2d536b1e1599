package org.espalier.treatment;

import java.time.LocalDate;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.patient.PatientService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The theatre list of a day. */
@Service
@Transactional
public class TheatreService {

    private final JdbcTreatmentFactRepository facts;
    private final PatientService patients;

    TheatreService(JdbcTreatmentFactRepository facts, PatientService patients) {
        this.facts = facts;
        this.patients = patients;
    }

    /** Who has a place in theatre on the day, with the plans for that day that still wait. */
    public List<TheatreCase> list(SiteId site, LocalDate day) {
        return patients.all(site, facts.inTheatre(site, day), "theatre").stream()
                .map(child -> new TheatreCase(
                        child,
                        facts.all(FactTable.PLANS, child.id()).facts().stream()
                                .filter(plan -> day.equals(plan.theatreOn()))
                                .toList()))
                .toList();
    }
}
