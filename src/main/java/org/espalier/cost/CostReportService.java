package org.espalier.cost;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.espalier.access.AccessLog;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What episodes, children and pathways cost, and what the next quarter will. Children are known by pseudonyms alone.
 */
@Service
@Transactional
public class CostReportService {

    private final JdbcEpisodeRepository episodes;
    private final JdbcChargeRepository charges;
    private final JdbcAccountRepository accounts;
    private final JdbcTariffRepository tariffs;
    private final JdbcAllowanceRepository allowances;
    private final SiteService sites;
    private final AccessLog log;

    CostReportService(
            JdbcEpisodeRepository episodes,
            JdbcChargeRepository charges,
            JdbcAccountRepository accounts,
            JdbcTariffRepository tariffs,
            JdbcAllowanceRepository allowances,
            SiteService sites,
            AccessLog log) {
        this.episodes = episodes;
        this.charges = charges;
        this.accounts = accounts;
        this.tariffs = tariffs;
        this.allowances = allowances;
        this.sites = sites;
        this.log = log;
    }

    /** An episode's cost with the pseudonym of the child. */
    public record Told(Pseudonym pseudonym, EpisodeCost cost) {}

    /**
     * What a child's care cost.
     *
     * @param limbs the right limb's episode first
     * @param total all that was charged, before any plan too
     */
    public record ChildCost(List<EpisodeCost> limbs, CostSum total) {}

    /** Every episode of the hospital, the one that began last first. */
    public List<Told> episodes(SiteId site) {
        var known = accounts.all(site).stream().collect(Collectors.toMap(Account::child, account -> account));
        var told = costs(site).stream()
                .filter(cost -> known.containsKey(cost.episode().child()))
                .sorted(Comparator.comparing(
                                (EpisodeCost cost) -> cost.episode().began())
                        .reversed())
                .toList();
        log.listed(
                "cost episodes",
                told.stream().map(cost -> account(known, cost).ref()).distinct().toList());
        return told.stream()
                .map(cost -> new Told(account(known, cost).pseudonym(), cost))
                .toList();
    }

    /** What one child's care cost at the hospital of the account. */
    public ChildCost child(Account account) {
        log.opened(account.ref(), "costs");
        var all = charges.all(account.site(), account.child());
        var standing = all.stream().filter(Charge::stands).map(Charge::line).toList();
        return new ChildCost(
                EpisodeCost.of(episodes.of(account.site(), account.child()), all), CostSum.ofLines(standing));
    }

    /** What pathways cost at the hospital in a calendar year. */
    public PathwayReport pathways(SiteId site, int year) {
        return PathwayReport.of(site, year, costs(site));
    }

    /** What the next quarter will cost by what is written down today. */
    public Budget budget(SiteId site) {
        var today = sites.today(site);
        var recent = charges.of(site, today.minusYears(1), today, Integer.MAX_VALUE);
        return Budget.of(
                today,
                episodes.expected(site),
                new TariffBook(tariffs.all(site)),
                new AllowanceBook(allowances.all(site)),
                Budget.implants(recent.stream()));
    }

    private List<EpisodeCost> costs(SiteId site) {
        Map<ChildId, List<Charge>> byChild =
                charges.standing(site).stream().collect(Collectors.groupingBy(Charge::child));
        Map<ChildId, List<Episode>> ofChild =
                episodes.all(site).stream().collect(Collectors.groupingBy(Episode::child));
        return ofChild.entrySet().stream()
                .flatMap(one -> EpisodeCost.of(one.getValue(), byChild.getOrDefault(one.getKey(), List.of())).stream())
                .toList();
    }

    private static Account account(Map<ChildId, Account> known, EpisodeCost cost) {
        return Objects.requireNonNull(known.get(cost.episode().child()));
    }
}
