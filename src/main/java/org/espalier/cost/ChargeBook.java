package org.espalier.cost;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.espalier.access.CurrentStaff;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Component;

/**
 * Keeps a child's charges the ones that follow from its facts: adds what is missing, reverses what no longer follows,
 * and leaves alone what stands by somebody's word. Asked twice it does nothing the second time.
 */
@Component
class ChargeBook {

    private final JdbcChargeRepository charges;
    private final JdbcAccountRepository accounts;
    private final JdbcTariffRepository tariffs;
    private final CurrentStaff currentStaff;
    private final Ids ids;
    private final Clock clock;

    ChargeBook(
            JdbcChargeRepository charges,
            JdbcAccountRepository accounts,
            JdbcTariffRepository tariffs,
            CurrentStaff currentStaff,
            Ids ids,
            Clock clock) {
        this.charges = charges;
        this.accounts = accounts;
        this.tariffs = tariffs;
        this.currentStaff = currentStaff;
        this.ids = ids;
        this.clock = clock;
    }

    private record FactKey(ChargeSource source, UUID fact) {

        static FactKey of(ChargeLine line) {
            return new FactKey(line.source(), line.fact());
        }
    }

    /**
     * Makes the charges of a child agree with the claims.
     *
     * @param scope which charges the claims are all of
     * @return how many were written
     */
    int settle(ChildId child, SiteId site, Predicate<ChargeLine> scope, List<Claim> claims) {
        charges.lock(child);
        var payer = accounts.open(site, child).map(Account::payer).orElse("");
        var standing = charges.all(child).stream()
                .filter(charge -> charge.stands() && !charge.isByHand() && scope.test(charge.line()))
                .toList();
        var elsewhere = standing.stream()
                .filter(charge -> !charge.site().equals(site))
                .map(charge -> FactKey.of(charge.line()))
                .collect(Collectors.toSet());
        var own = standing.stream().filter(charge -> charge.site().equals(site)).toList();
        var due = new Pricing(new TariffBook(tariffs.all(site)), payer)
                .price(claims).stream()
                        .filter(line -> !elsewhere.contains(FactKey.of(line)))
                        .filter(line -> own.stream().noneMatch(charge -> covers(charge, line)))
                        .collect(Collectors.toMap(ChargeLine::subject, line -> line));
        int reversed = reverse(own, claims, due);
        var kept = own.stream().map(Charge::line).collect(Collectors.toSet());
        var missing = due.values().stream().filter(line -> !kept.contains(line)).toList();
        missing.forEach(line -> add(NewCharge.of(new ChargeId(ids.next()), site, child, line)));
        return reversed + missing.size();
    }

    /** Takes a charge back; both stay. */
    void reverse(Charge charge, String reason) {
        add(NewCharge.reversing(new ChargeId(ids.next()), charge, reason));
    }

    void add(NewCharge charge) {
        charges.add(charge, currentStaff.find(), clock.instant().truncatedTo(ChronoUnit.MICROS));
    }

    private int reverse(List<Charge> own, List<Claim> claims, Map<ChargeLine.Subject, ChargeLine> due) {
        var facts = claims.stream()
                .map(claim -> new FactKey(claim.source(), claim.fact()))
                .collect(Collectors.toSet());
        var wrong = own.stream().filter(charge -> !holds(charge, facts, due)).toList();
        wrong.forEach(charge -> reverse(charge, why(charge, due).name()));
        return wrong.size();
    }

    private static boolean holds(Charge charge, Set<FactKey> facts, Map<ChargeLine.Subject, ChargeLine> due) {
        return charge.isAdjusted()
                ? facts.contains(FactKey.of(charge.line()))
                : Optional.ofNullable(due.get(charge.line().subject()))
                        .filter(charge.line()::equals)
                        .isPresent();
    }

    private static Charge.Reversal why(Charge charge, Map<ChargeLine.Subject, ChargeLine> due) {
        return due.containsKey(charge.line().subject()) ? Charge.Reversal.PRICE_CHANGED : Charge.Reversal.FACT_CHANGED;
    }

    /** Whether somebody's word stands for what the rules would write. */
    private static boolean covers(Charge charge, ChargeLine line) {
        var own = charge.line();
        return charge.isAdjusted()
                && FactKey.of(own).equals(FactKey.of(line))
                && own.rule() == line.rule()
                && own.item() == line.item()
                && own.side() == line.side()
                && own.movement().equals(line.movement())
                && !line.on().isBefore(own.on())
                && !line.on().isAfter(own.until());
    }
}
