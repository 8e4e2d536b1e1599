package org.espalier.film.internal.dicomweb;

import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Component;

/** The site whose archive asks. */
@Component
class ArchiveSite {

    private final CurrentStaff currentStaff;

    ArchiveSite(CurrentStaff currentStaff) {
        this.currentStaff = currentStaff;
    }

    SiteId get() {
        return currentStaff.sites().stream()
                .filter(site -> currentStaff.has(Role.ARCHIVE, site))
                .findFirst()
                .orElseThrow(() -> new AccessDeniedException("only the archive of a site asks here"));
    }
}
