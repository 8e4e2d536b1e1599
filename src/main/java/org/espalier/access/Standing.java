package org.espalier.access;

import java.util.Set;
import java.util.stream.Collectors;

/** What a member of staff is today: their roles at each site, and whether they run the network. */
record Standing(StaffId staff, String name, boolean operator, Set<Held> held) {

    /** A role held at a site. */
    record Held(SiteId site, Role role) {}

    boolean holds(Role role) {
        return held.stream().anyMatch(one -> one.role() == role);
    }

    boolean holds(Role role, SiteId site) {
        return held.contains(new Held(site, role));
    }

    Set<SiteId> sites() {
        return held.stream().map(Held::site).collect(Collectors.toUnmodifiableSet());
    }

    Set<SiteId> sitesAs(Role role) {
        return held.stream().filter(one -> one.role() == role).map(Held::site).collect(Collectors.toUnmodifiableSet());
    }
}
