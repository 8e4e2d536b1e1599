package org.espalier.interchange;

import java.util.List;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lets those who treat at a hospital bring its own records in. What they may not write by hand they may bring in. */
@Service
public class ImportService {

    private final ClinicImport clinic;
    private final JdbcBroughtInRepository broughtIn;
    private final CurrentStaff currentStaff;

    ImportService(ClinicImport clinic, JdbcBroughtInRepository broughtIn, CurrentStaff currentStaff) {
        this.clinic = clinic;
        this.broughtIn = broughtIn;
        this.currentStaff = currentStaff;
    }

    /** What taking the folder would do; nothing is kept. */
    public ImportReport preview(SiteId site, ClinicFolder folder) {
        demandTreating(site);
        return clinic.preview(site, folder);
    }

    /** Takes the folder, or so much of it as is asked for. */
    public ImportReport take(SiteId site, ClinicFolder folder, Portion portion) {
        demandTreating(site);
        return clinic.take(site, folder, portion);
    }

    /** What was brought in at the hospital, the last first. */
    @Transactional
    public List<BroughtIn> before(SiteId site) {
        return broughtIn.of(site);
    }

    private void demandTreating(SiteId site) {
        if (!currentStaff.has(Role.SURGEON, site) && !currentStaff.has(Role.NURSE, site)) {
            throw new AccessDeniedException("records are brought in by those who treat at the hospital");
        }
    }
}
