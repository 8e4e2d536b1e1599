package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.access.AccessLog;
import org.espalier.access.CurrentStaff;
import org.espalier.access.Role;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The charges of a hospital's accounts. They follow from facts by rule; what the rules cannot know is put right by a
 * charge in place of another, or added by hand, each with its reason. Children are known by pseudonyms, and every look
 * is written down.
 */
@Service
@Transactional
public class ChargeService {

    /** The most charges one look shows. */
    public static final int MOST = 500;

    /** The shortest and the longest reason that is kept. */
    public static final int LEAST_REASON = 3;

    public static final int REASON_LENGTH = 400;

    private final JdbcChargeRepository charges;
    private final JdbcAccountRepository accounts;
    private final JdbcTariffRepository tariffs;
    private final ChargeBook book;
    private final CostJobs.Asking jobs;
    private final SiteService sites;
    private final CurrentStaff currentStaff;
    private final AccessLog log;
    private final Ids ids;

    ChargeService(
            JdbcChargeRepository charges,
            JdbcAccountRepository accounts,
            JdbcTariffRepository tariffs,
            ChargeBook book,
            CostJobs.Asking jobs,
            SiteService sites,
            CurrentStaff currentStaff,
            AccessLog log,
            Ids ids) {
        this.charges = charges;
        this.accounts = accounts;
        this.tariffs = tariffs;
        this.book = book;
        this.jobs = jobs;
        this.sites = sites;
        this.currentStaff = currentStaff;
        this.log = log;
        this.ids = ids;
    }

    /** A charge with the pseudonym of the child. */
    public record Booked(Pseudonym pseudonym, Charge charge) {}

    /** Charges of the days, ends included, the latest day first, no more than {@link #MOST}; reversed ones too. */
    public List<Booked> ofPeriod(SiteId site, LocalDate from, LocalDate until) {
        return booked(site, from, until, MOST);
    }

    /** All charges of the days, to be taken away as a file. */
    public List<Booked> allOfPeriod(SiteId site, LocalDate from, LocalDate until) {
        return booked(site, from, until, Integer.MAX_VALUE);
    }

    /** The account of a pseudonym; empty when the hospital has none such. */
    public Optional<Account> account(SiteId site, Pseudonym pseudonym) {
        var found = accounts.find(site, pseudonym);
        found.ifPresent(account -> log.opened(account.ref(), "costs"));
        return found;
    }

    /** The account of a child at the hospital that has care, for whoever treats it. */
    public Optional<Account> accountOf(ChildId child) {
        return currentStaff.sites().stream()
                .flatMap(site -> accounts.find(site, child).stream())
                .findFirst();
    }

    /** All charges of an account, the latest day first, reversed ones too. */
    public List<Charge> ofAccount(Account account) {
        log.opened(account.ref(), "costs");
        return charges.all(account.site(), account.child());
    }

    /**
     * Puts another quantity in place of a charge's: the charge is reversed, and one of the same price stands in its
     * place.
     *
     * @return false when somebody else reversed it meanwhile; nothing is kept then
     */
    public boolean adjust(ChargeId id, BigDecimal quantity, String reason) {
        var why = reason(reason);
        var charge = lockStanding(id);
        if (charge.isEmpty()) {
            return false;
        }
        book.reverse(charge.get(), why);
        if (quantity.signum() > 0) {
            book.add(new NewCharge(
                    new ChargeId(ids.next()),
                    charge.get().site(),
                    charge.get().child(),
                    requantified(charge.get().line(), quantity),
                    Optional.empty(),
                    Optional.of(id),
                    Optional.of(why)));
        }
        return true;
    }

    /** Adds to an account what no rule knows of, such as sessions of physiotherapy, at the tariff of the day. */
    public void add(Account account, TariffItem item, LocalDate on, BigDecimal quantity, String reason) {
        demand(account.site());
        var why = reason(reason);
        if (on.isAfter(sites.today(account.site()))) {
            throw new IllegalArgumentException("not today or before: " + on);
        }
        var claim = Claim.of(ChargeSource.HAND, ids.next(), ChargeRule.BY_HAND, item, null, on, quantity);
        new Pricing(new TariffBook(tariffs.all(account.site())), account.payer())
                .price(claim)
                .forEach(line -> book.add(new NewCharge(
                        new ChargeId(ids.next()),
                        account.site(),
                        account.child(),
                        line,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(why))));
    }

    /** Says who pays for the child at the hospital; its charges are written anew by that payer's tariffs. */
    public void pay(Account account, String payer) {
        demand(account.site());
        if (payer.strip().length() > TariffData.PAYER_LENGTH) {
            throw new IllegalArgumentException("longer than " + TariffData.PAYER_LENGTH + " characters: " + payer);
        }
        accounts.pay(account, payer.strip());
        jobs.renew(account.site(), account.child());
    }

    /** Makes the hospital's charges and episodes anew from the facts; what agrees already is left as it is. */
    public void rebuild(SiteId site) {
        demand(site);
        jobs.renew(site);
    }

    private List<Booked> booked(SiteId site, LocalDate from, LocalDate until, int most) {
        Map<ChildId, Account> known =
                accounts.all(site).stream().collect(Collectors.toMap(Account::child, account -> account));
        var found = charges.of(site, from, until, most).stream()
                .flatMap(charge -> Stream.ofNullable(known.get(charge.child()))
                        .map(account -> new Booked(account.pseudonym(), charge)))
                .toList();
        var shown = found.stream()
                .map(one ->
                        Objects.requireNonNull(known.get(one.charge().child())).ref())
                .distinct()
                .toList();
        log.listed("costs", shown);
        return found;
    }

    private Optional<Charge> lockStanding(ChargeId id) {
        charges.find(id).ifPresent(one -> {
            demand(one.site());
            charges.lock(one.child());
        });
        return charges.find(id).filter(Charge::stands);
    }

    private static ChargeLine requantified(ChargeLine line, BigDecimal quantity) {
        var priced = line.priced()
                .map(one -> Pricing.priced(
                        quantity, new Pricing.Unit(one.unit(), one.amount().currency()), one.overheadPercent()));
        return new ChargeLine(
                line.source(),
                line.fact(),
                line.rule(),
                line.item(),
                line.side(),
                line.on(),
                line.until(),
                quantity,
                priced,
                line.tariff(),
                line.movement());
    }

    private static String reason(String typed) {
        var reason = typed.strip();
        if (reason.length() < LEAST_REASON || reason.length() > REASON_LENGTH) {
            throw new IllegalArgumentException("said with a reason of 3 to 400 characters");
        }
        return reason;
    }

    private void demand(SiteId site) {
        if (!currentStaff.has(Role.COST_ADMINISTRATOR, site)) {
            throw new AccessDeniedException("the hospital's own cost administrator keeps its accounts");
        }
    }
}
