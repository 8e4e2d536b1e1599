package org.espalier.cost.ui;

import java.time.LocalDate;
import java.util.List;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Component;

/** The hospitals whose costs the reader administers. */
@Component
class CostSites {

    private final SiteService sites;
    private final CurrentStaff currentStaff;

    CostSites(SiteService sites, CurrentStaff currentStaff) {
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    List<Site> mine() {
        return sites.mine().stream()
                .filter(site -> currentStaff.has(Role.COST_ADMINISTRATOR, site.id()))
                .toList();
    }

    LocalDate today(Site site) {
        return sites.today(site.id());
    }
}
