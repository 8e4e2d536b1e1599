package org.espalier.patient.ui;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.Site;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Component;

/** The hospitals at which the reader treats children. */
@Component
class ClinicalSites {

    private final SiteService sites;
    private final CurrentStaff currentStaff;

    ClinicalSites(SiteService sites, CurrentStaff currentStaff) {
        this.sites = sites;
        this.currentStaff = currentStaff;
    }

    List<Site> all() {
        return sites.mine().stream()
                .filter(site -> Stream.of(Role.SURGEON, Role.NURSE, Role.RADIOGRAPHER)
                        .anyMatch(role -> currentStaff.has(role, site.id())))
                .toList();
    }

    /** The one of the code, else the first. */
    Site of(Optional<String> code) {
        var all = all();
        return all.stream()
                .filter(site -> code.filter(site.code()::equals).isPresent())
                .findFirst()
                .orElseGet(all::getFirst);
    }
}
