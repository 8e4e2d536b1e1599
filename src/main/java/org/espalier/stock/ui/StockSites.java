package org.espalier.stock.ui;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Component;

/** The hospitals whose stock the reader sees. */
@Component
class StockSites {

    private final SiteService sites;
    private final CurrentStaff currentStaff;

    StockSites(SiteService sites, CurrentStaff currentStaff) {
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    List<Site> mine() {
        return sites.mine().stream()
                .filter(site -> Stream.of(Role.STOREKEEPER, Role.SURGEON, Role.NURSE, Role.COST_ADMINISTRATOR)
                        .anyMatch(role -> currentStaff.has(role, site.id())))
                .toList();
    }

    /** Every hospital of the network but one. */
    List<Site> others(SiteId than) {
        return sites.all().stream().filter(site -> !site.id().equals(than)).toList();
    }

    Site get(SiteId site) {
        return sites.get(site);
    }

    LocalDate today(SiteId site) {
        return sites.today(site);
    }

    boolean keeps(SiteId site) {
        return currentStaff.has(Role.STOREKEEPER, site);
    }

    /** Whether the reader may give a safety notice for a lot. */
    boolean mayHold(SiteId site) {
        return keeps(site) || currentStaff.has(Role.SURGEON, site);
    }
}
