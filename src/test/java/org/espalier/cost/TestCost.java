package org.espalier.cost;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildId;
import org.espalier.treatment.ProcedureKind;
import org.springframework.stereotype.Component;

/** Tariffs and accounts for a test; every price is invented. */
@Component
public class TestCost {

    static final LocalDate LONG_AGO = LocalDate.of(2020, 1, 1);

    private final TestNetwork network;
    private final TariffService tariffs;
    private final ChargeService charges;
    private final CostRenewal renewal;

    TestCost(TestNetwork network, TariffService tariffs, ChargeService charges, CostRenewal renewal) {
        this.network = network;
        this.tariffs = tariffs;
        this.charges = charges;
        this.renewal = renewal;
    }

    static BigDecimal number(String text) {
        return new BigDecimal(text);
    }

    /** A price in euro for everybody. */
    static TariffData price(TariffItem item, String price, LocalDate from) {
        return priceFor("", item, price, from);
    }

    static TariffData priceFor(String payer, TariffItem item, String price, LocalDate from) {
        var currency = item.isShare() ? null : Currency.getInstance("EUR");
        return new TariffData(item, payer, number(price), currency, Tax.EXCLUDED, from, "invented for a test");
    }

    /** A price as it stands from a day on, without an end. */
    static Tariff tariff(TariffItem item, String price, LocalDate from) {
        return tariff(price(item, price, from), Optional.empty());
    }

    static Tariff tariff(TariffData data, Optional<LocalDate> until) {
        return new Tariff(new TariffId(UUID.randomUUID()), new SiteId(new UUID(0, 1)), data, until, false);
    }

    static Allowance allowance(ProcedureKind kind, TariffItem item, String quantity) {
        return Allowance.of(Optional.of(kind), item, number(quantity), LONG_AGO);
    }

    static Allowance onceEach(TariffItem item, String quantity) {
        return Allowance.of(Optional.empty(), item, number(quantity), LONG_AGO);
    }

    /** The hospital's cost administrator, who has set what everything costs. */
    public UUID administrator(SiteId site) {
        var administrator = network.staff(site.value(), "COST_ADMINISTRATOR");
        network.as(administrator, () -> {
            setAll(site);
            return site;
        });
        return administrator;
    }

    /** Sets a price of an invented list for every item, and what operations take. */
    private void setAll(SiteId site) {
        for (var item : TariffItem.values()) {
            tariffs.set(site, price(item, item.isShare() ? "12.5" : String.valueOf(10 + 7 * item.ordinal()), LONG_AGO));
        }
        tariffs.allow(site, onceEach(TariffItem.THEATRE_MINUTE, "20"));
        tariffs.allow(site, onceEach(TariffItem.ANAESTHESIA_MINUTE, "30"));
        tariffs.allow(site, allowance(ProcedureKind.PLATE_PLACED, TariffItem.THEATRE_MINUTE, "25"));
        tariffs.allow(site, allowance(ProcedureKind.PLATE_PLACED, TariffItem.BED_DAY, "1"));
    }

    /** Makes a child's charges and episodes anew, and says how many charges were written. */
    public int renew(SiteId site, ChildId child) {
        return renewal.renew(site, child);
    }

    /** The account of a child, as its hospital's cost administrator finds it. */
    public Account account(UUID surgeon, ChildId child) {
        return network.as(surgeon, () -> charges.accountOf(child)).orElseThrow();
    }

    /** Prices the child's care, and says with what each method can be asked about it. */
    public Map<String, Object[]> arrange(SiteId site, ChildId child) {
        var administrator = administrator(site);
        renew(site, child);
        var account = account(network.staff(site.value(), "SURGEON"), child);
        var charge = network.as(administrator, () -> charges.ofAccount(account)).getFirst();
        var from = LocalDate.of(2025, 1, 1);
        var until = LocalDate.of(2025, 12, 31);
        return Map.ofEntries(
                Map.entry("TariffService.set", new Object[] {site, price(TariffItem.VISIT, "95", from)}),
                Map.entry("TariffService.allow", new Object[] {site, onceEach(TariffItem.THEATRE_MINUTE, "21")}),
                Map.entry(
                        "TariffService.estimate",
                        new Object[] {site, Quantities.NONE.with(TariffItem.VISIT, BigDecimal.ONE)}),
                Map.entry("TariffService.quantities", new Object[] {site, List.of(ProcedureKind.PLATE_PLACED)}),
                Map.entry("ChargeService.ofPeriod", new Object[] {site, from, until}),
                Map.entry("ChargeService.allOfPeriod", new Object[] {site, from, until}),
                Map.entry("ChargeService.account", new Object[] {site, account.pseudonym()}),
                Map.entry("ChargeService.ofAccount", new Object[] {account}),
                Map.entry("ChargeService.adjust", new Object[] {charge.id(), BigDecimal.ONE, "counted again"}),
                Map.entry(
                        "ChargeService.add",
                        new Object[] {account, TariffItem.PHYSIOTHERAPY, from, BigDecimal.TWO, "two sessions"}),
                Map.entry("CostReportService.pathways", new Object[] {site, 2025}),
                Map.entry("CostReportService.child", new Object[] {account}),
                Map.entry("ChargeService.pay", new Object[] {account, "Invented sick fund"}));
    }
}
