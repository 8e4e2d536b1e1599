package org.espalier.demo;

import java.math.BigDecimal;
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
import org.espalier.platform.Caller;
import org.espalier.platform.Callers;
import org.espalier.science.quantity.Length;
import org.espalier.stock.Arrival;
import org.espalier.stock.Build;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Lot;
import org.espalier.stock.Magnet;
import org.espalier.stock.Material;
import org.espalier.stock.Need;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.ProductKind;
import org.espalier.stock.Reservation;
import org.espalier.stock.ReservationService;
import org.espalier.stock.Shelf;
import org.espalier.stock.ShelfData;
import org.espalier.stock.ShelfId;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.StockService;
import org.espalier.stock.UnitCost;
import org.espalier.stock.Use;
import org.espalier.stock.UseService;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;

/** Invented products on the shelves of the demonstration, and some operations that took of them. */
@Component
@Profile("demo")
class DemoStock {

    private static final Currency EURO = Currency.getInstance("EUR");
    private static final List<Integer> LENGTHS = List.of(16, 20, 24, 28, 32, 36);
    private static final int OPERATIONS = 4;

    private final StaffService staff;
    private final CatalogueService catalogue;
    private final StockService stock;
    private final UseService uses;
    private final ReservationService reservations;

    DemoStock(
            StaffService staff,
            CatalogueService catalogue,
            StockService stock,
            UseService uses,
            ReservationService reservations) {
        this.staff = staff;
        this.catalogue = catalogue;
        this.stock = stock;
        this.uses = uses;
        this.reservations = reservations;
    }

    /** Fills the shelves of every hospital; what is there already stays as it is. */
    void fill(Map<DemoHospital, DemoTeam> teams, LocalDate firstDay) {
        var operator = new StaffId(DemoIds.of("operator"));
        var everybody = as(operator, staff::all);
        teams.forEach((hospital, team) -> {
            var keeper =
                    id(everybody, hospital == DemoHospital.VALLEY ? DemoPerson.VALLEY_NURSE : DemoPerson.STOREKEEPER);
            as(keeper, () -> {
                fill(hospital, team.site(), firstDay);
                return keeper;
            });
            as(team.surgeon(), () -> {
                operate(hospital, team.site());
                return keeper;
            });
        });
    }

    private static StaffId id(List<StaffMember> everybody, DemoPerson person) {
        return everybody.stream()
                .filter(member -> member.login().equals(person.login()))
                .findFirst()
                .map(StaffMember::id)
                .orElseThrow();
    }

    private static <T> T as(StaffId who, Supplier<T> work) {
        return Callers.callAs(new Caller.Staff(who.value()), work);
    }

    private void fill(DemoHospital hospital, SiteId site, LocalDate firstDay) {
        var store = shelf(site, ShelfKind.STORE, "Implant store");
        var tray = shelf(site, ShelfKind.TRAY, "Knee tray 1");
        for (int holes : List.of(12, 16)) {
            var plate = product(plate(holes));
            arrive(hospital, plate, "P" + holes + "-1", firstDay.plusDays(70), 3, store, "210.00");
            arrive(hospital, plate, "P" + holes + "-2", firstDay.plusYears(3), 4, store, "214.50");
        }
        for (int length : LENGTHS) {
            var screw = product(screw(length));
            arrive(hospital, screw, "S" + length + "-1", null, 6, tray, "38.00");
            arrive(hospital, screw, "S" + length + "-2", null, 6, tray, "39.20");
        }
        var rescue = product(ProductData.of(ProductKind.RESCUE_SET, "Invented rescue set", "DEMO-RS-1"));
        arrive(hospital, rescue, null, null, 1, store, null);
        var need = new Need(
                ProductKind.SCREW,
                null,
                Length.ofMillimetres(4.5),
                Length.ofMillimetres(34),
                Length.ofMillimetres(40),
                null,
                14);
        reservations.reserve(new Reservation(
                DemoIds.of("reservation", hospital.code()),
                site,
                DemoIds.of("planned", hospital.code()),
                firstDay.plusDays(9),
                List.of(need)));
    }

    private static ProductData plate(int length) {
        return new ProductData(
                ProductKind.PLATE,
                "Invented two-hole plate",
                "DEMO-PL-" + length,
                null,
                null,
                Length.ofMillimetres(length),
                null,
                Material.TITANIUM_ALLOY,
                null,
                Magnet.CONDITIONAL,
                true,
                true);
    }

    private static ProductData screw(int length) {
        return new ProductData(
                ProductKind.SCREW,
                "Invented screw for two-hole plates",
                "DEMO-SC-" + length,
                Length.ofMillimetres(4.5),
                Length.ofMillimetres(3.2),
                Length.ofMillimetres(length),
                Build.CANNULATED,
                Material.TITANIUM_ALLOY,
                "hex 3.5",
                Magnet.CONDITIONAL,
                true,
                false);
    }

    private Product product(ProductData data) {
        return find(data.reference()).orElseGet(() -> catalogue.add(data));
    }

    private Optional<Product> find(String reference) {
        return catalogue.search(reference, Optional.empty()).stream()
                .filter(product -> product.data().reference().equals(reference))
                .findFirst();
    }

    private ShelfId shelf(SiteId site, ShelfKind kind, String name) {
        return stock.shelves(site).stream()
                .filter(shelf -> name.equals(shelf.name()))
                .findFirst()
                .map(Shelf::id)
                .orElseGet(() -> stock.addShelf(site, new ShelfData(kind, name, null, null)));
    }

    private void arrive(
            DemoHospital hospital,
            Product product,
            @Nullable String lot,
            @Nullable LocalDate expires,
            int quantity,
            ShelfId to,
            @Nullable String cost) {
        stock.receive(new Arrival(
                DemoIds.of("arrival", hospital.code(), product.data().reference(), String.valueOf(lot)),
                product.id(),
                Optional.ofNullable(lot),
                Optional.ofNullable(expires),
                quantity,
                to,
                Optional.ofNullable(cost).map(amount -> new UnitCost(new BigDecimal(amount), EURO))));
    }

    /** A few operations take one or two plates each, so that there is something to learn the demand from. */
    private void operate(DemoHospital hospital, SiteId site) {
        var plate = find("DEMO-PL-16").orElseThrow();
        for (int number = 0; number < OPERATIONS; number++) {
            var use = DemoIds.of("use", hospital.code(), String.valueOf(number));
            int pieces = number % 3 == 0 ? 2 : 1;
            if (uses.ofHolder(use).isEmpty()) {
                uses.proposals(site, plate.id()).stream()
                        .filter(one -> one.line().quantity() >= pieces)
                        .findFirst()
                        .ifPresent(one -> uses.use(new Use(
                                use,
                                one.shelf().id(),
                                plate.id(),
                                one.line().lot().map(Lot::id),
                                pieces,
                                use)));
            }
        }
    }
}
