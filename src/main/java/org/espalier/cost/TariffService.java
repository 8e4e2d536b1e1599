package org.espalier.cost;

import java.time.Clock;
import java.util.List;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.platform.Ids;
import org.espalier.treatment.ProcedureKind;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What a hospital sets: prices, shares, what operations take by agreement. A price that was set stays; a later one ends
 * it, or takes its place from the same day on, and the charges of those days are reversed and written anew.
 */
@Service
@Transactional
public class TariffService {

    private final JdbcTariffRepository tariffs;
    private final JdbcAllowanceRepository allowances;
    private final CostJobs.Asking jobs;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    TariffService(
            JdbcTariffRepository tariffs,
            JdbcAllowanceRepository allowances,
            CostJobs.Asking jobs,
            SiteService sites,
            CurrentStaff currentStaff,
            Ids ids,
            Clock clock) {
        this.tariffs = tariffs;
        this.allowances = allowances;
        this.jobs = jobs;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    /** All that were ever set at the hospital, by item, the latest first. */
    public List<Tariff> all(SiteId site) {
        return tariffs.all(site);
    }

    /** Sets a price from a day on; whatever held on that day ends the day before. */
    public Tariff set(SiteId site, TariffData data) {
        demand(site);
        var id = new TariffId(ids.next());
        tariffs.add(id, site, data, currentStaff.find(), clock.instant());
        jobs.renewSoon(site);
        return tariffs.all(site).stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** What operations take by agreement, replaced agreements left out. */
    public List<Allowance> allowances(SiteId site) {
        return allowances.all(site);
    }

    /** Agrees how much operations take of an item from a day on. */
    public void allow(SiteId site, Allowance allowance) {
        demand(site);
        allowances.add(ids.next(), site, allowance, currentStaff.find(), clock.instant());
        jobs.renewSoon(site);
    }

    /**
     * What a list of items would cost at the hospital today, overheads by its rule; what has no tariff is named.
     */
    public CostEstimate estimate(SiteId site, Quantities quantities) {
        return CostEstimate.of(new TariffBook(tariffs.all(site)), sites.today(site), quantities.of());
    }

    /** What one operation takes today by the hospital's agreements, in which all of them are done; no implants. */
    public Quantities quantities(SiteId site, List<ProcedureKind> done) {
        return new Quantities(new AllowanceBook(allowances.all(site)).operation(done, sites.today(site)));
    }

    private void demand(SiteId site) {
        if (!currentStaff.has(Role.COST_ADMINISTRATOR, site)) {
            throw new AccessDeniedException("the hospital's own cost administrator sets what things cost there");
        }
    }
}
