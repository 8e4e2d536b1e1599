package org.espalier.access;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The hospitals of the network. */
@Service
public class SiteService {

    private final JdbcSiteRepository sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Ids ids;
    private final Clock clock;

    SiteService(JdbcSiteRepository sites, CurrentStaff currentStaff, AccessLog log, Ids ids, Clock clock) {
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.ids = ids;
        this.clock = clock;
    }

    /** All hospitals, by name. */
    @Transactional
    public List<Site> all() {
        return sites.all();
    }

    /** The hospitals the caller works at, by name. */
    @Transactional
    public List<Site> mine() {
        var mine = currentStaff.sites();
        return sites.all().stream().filter(site -> mine.contains(site.id())).toList();
    }

    @Transactional
    public Site get(SiteId site) {
        return sites.find(site).orElseThrow(() -> new IllegalArgumentException("no such site: " + site));
    }

    /** Today at the site, by its own zone. */
    @Transactional
    public LocalDate today(SiteId site) {
        return LocalDate.ofInstant(clock.instant(), get(site).zone());
    }

    /** Adds a hospital to the network. */
    @Transactional
    public Site add(SiteData data) {
        var id = new SiteId(ids.next());
        sites.add(id, data);
        log.managed("site added", id, null);
        return get(id);
    }

    /** Changes what is said of a hospital. */
    @Transactional
    public void change(SiteId site, SiteData data) {
        sites.change(site, data);
        log.managed("site changed", site, null);
    }
}
