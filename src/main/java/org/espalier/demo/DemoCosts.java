package org.espalier.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.access.StaffMember;
import org.espalier.access.StaffService;
import org.espalier.cost.Allowance;
import org.espalier.cost.TariffData;
import org.espalier.cost.TariffItem;
import org.espalier.cost.TariffService;
import org.espalier.cost.Tax;
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.treatment.ProcedureKind;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Invented tariffs of the demonstration's hospitals, with a change of prices; nobody ever paid them. */
@Component
@Profile("demo")
class DemoCosts {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final String SOURCE = "Invented for the demonstration";
    private static final int YEARS_BACK = 12;
    private static final BigDecimal RISE = new BigDecimal("1.04");

    private static final Map<TariffItem, String> PRICES = Map.ofEntries(
            Map.entry(TariffItem.THEATRE_MINUTE, "13.20"),
            Map.entry(TariffItem.ANAESTHESIA_MINUTE, "6.40"),
            Map.entry(TariffItem.BED_DAY, "540"),
            Map.entry(TariffItem.VISIT, "84"),
            Map.entry(TariffItem.FILM, "46"),
            Map.entry(TariffItem.MRI, "315"),
            Map.entry(TariffItem.CAST, "62"),
            Map.entry(TariffItem.BRACE, "780"),
            Map.entry(TariffItem.PHYSIOTHERAPY, "38"),
            Map.entry(TariffItem.FRAME_DAY, "21"),
            Map.entry(TariffItem.LETTER, "2.85"),
            Map.entry(TariffItem.MISSED_VISIT, "24"),
            Map.entry(TariffItem.IMPLANT, "95"),
            Map.entry(TariffItem.OVERHEAD, "11"),
            Map.entry(TariffItem.OVERHEAD_IMPLANT, "4"));

    private final StaffService staff;
    private final TariffService tariffs;

    DemoCosts(StaffService staff, TariffService tariffs) {
        this.staff = staff;
        this.tariffs = tariffs;
    }

    /** Sets what things cost at every hospital, long before the first day, and higher from the year of that day on. */
    void set(Map<DemoHospital, DemoTeam> teams, LocalDate firstDay) {
        var everybody = as(new StaffId(DemoIds.of("operator")), staff::all);
        var administrator = everybody.stream()
                .filter(member -> member.login().equals(DemoPerson.COSTS.login()))
                .map(StaffMember::id)
                .findFirst()
                .orElseThrow();
        teams.forEach((hospital, team) -> as(administrator, () -> {
            set(team.site(), factor(hospital), firstDay);
            return administrator;
        }));
    }

    private static BigDecimal factor(DemoHospital hospital) {
        return switch (hospital) {
            case HARBOUR -> BigDecimal.ONE;
            case VALLEY -> new BigDecimal("0.88");
            case MOOR -> new BigDecimal("0.94");
        };
    }

    private void set(SiteId site, BigDecimal factor, LocalDate firstDay) {
        var first = firstDay.minusYears(YEARS_BACK).withDayOfYear(1);
        PRICES.forEach((item, price) -> {
            var here = item.isShare() ? BigDecimal.ONE : factor;
            set(site, item, new BigDecimal(price).multiply(here), first);
            if (!item.isShare()) {
                set(site, item, new BigDecimal(price).multiply(here).multiply(RISE), firstDay.withDayOfYear(1));
            }
        });
        allow(site, first, Optional.empty(), TariffItem.THEATRE_MINUTE, 20);
        allow(site, first, Optional.empty(), TariffItem.ANAESTHESIA_MINUTE, 35);
        for (var kind : List.of(ProcedureKind.PLATE_PLACED, ProcedureKind.PLATE_OUT)) {
            allow(site, first, Optional.of(kind), TariffItem.THEATRE_MINUTE, 25);
            allow(site, first, Optional.of(kind), TariffItem.ANAESTHESIA_MINUTE, 25);
            allow(site, first, Optional.of(kind), TariffItem.BED_DAY, 1);
        }
        for (var kind : List.of(ProcedureKind.OSTEOTOMY, ProcedureKind.FRAME_ON)) {
            allow(site, first, Optional.of(kind), TariffItem.THEATRE_MINUTE, 110);
            allow(site, first, Optional.of(kind), TariffItem.ANAESTHESIA_MINUTE, 120);
            allow(site, first, Optional.of(kind), TariffItem.BED_DAY, 4);
            allow(site, first, Optional.of(kind), TariffItem.PHYSIOTHERAPY, 10);
        }
    }

    private void set(SiteId site, TariffItem item, BigDecimal price, LocalDate from) {
        var rounded = price.setScale(2, RoundingMode.HALF_UP);
        tariffs.set(site, new TariffData(item, "", rounded, item.isShare() ? null : EURO, Tax.EXCLUDED, from, SOURCE));
    }

    private void allow(SiteId site, LocalDate from, Optional<ProcedureKind> kind, TariffItem item, int quantity) {
        tariffs.allow(site, Allowance.of(kind, item, BigDecimal.valueOf(quantity), from));
    }

    private static <T> T as(StaffId who, Supplier<T> work) {
        return Callers.callAs(new Caller.Staff(who.value()), work);
    }
}
