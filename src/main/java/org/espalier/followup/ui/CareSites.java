package org.espalier.followup.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Component;

/** The hospitals at which the reader calls children in. */
@Component
class CareSites {

    private final SiteService sites;
    private final CurrentStaff currentStaff;

    CareSites(SiteService sites, CurrentStaff currentStaff) {
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    List<Site> all() {
        return sites.mine().stream()
                .filter(site -> Stream.of(Role.SURGEON, Role.NURSE).anyMatch(role -> currentStaff.has(role, site.id())))
                .toList();
    }

    /** The one of the code; empty when there is none such. */
    Optional<Site> of(String code) {
        return all().stream().filter(site -> site.code().equals(code)).findFirst();
    }
}
