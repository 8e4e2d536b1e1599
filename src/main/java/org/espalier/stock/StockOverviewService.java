package org.espalier.stock;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The stock of a hospital as a whole: how much lies where, what expires, what it is worth, what is used. */
@Service
@Transactional
public class StockOverviewService {

    /** Within how many days an expiry is pointed out. */
    public static final int SOON_DAYS = 120;

    private static final int YEAR_DAYS = 365;

    private final JdbcStockOverviewRepository overview;
    private final JdbcShelfRepository shelves;
    private final SiteService sites;
    private final Clock clock;

    StockOverviewService(
            JdbcStockOverviewRepository overview, JdbcShelfRepository shelves, SiteService sites, Clock clock) {
        this.overview = overview;
        this.shelves = shelves;
        this.sites = sites;
        this.clock = clock;
    }

    /** Every shelf in use, and how much lies on it. */
    public List<ShelfSummary> shelves(SiteId site) {
        shelves.of(site);
        return overview.shelves(site);
    }

    /** What is past its last day or comes to it soon, and whether operations use it. */
    public List<Expiring> expiring(SiteId site) {
        var today = sites.today(site);
        var since = clock.instant().minus(YEAR_DAYS, ChronoUnit.DAYS);
        return LeftOver.of(overview.expiring(site, today.plusDays(SOON_DAYS), since), today);
    }

    /** What lies there is worth, by what each lot cost. */
    public List<StockValue> value(SiteId site) {
        return overview.value(site);
    }

    /** What operations took in the last year, operation by operation. */
    public List<Demand> demand(SiteId site) {
        return overview.demand(site, clock.instant().minus(YEAR_DAYS, ChronoUnit.DAYS));
    }
}
