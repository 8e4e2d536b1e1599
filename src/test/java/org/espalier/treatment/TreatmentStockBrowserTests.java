package org.espalier.treatment;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.treatment.TestTreatment.FEMUR;
import static org.espalier.treatment.TestTreatment.TIBIA;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.cost.TestCost;
import org.espalier.followup.VisitService;
import org.espalier.kit.DateText;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Explant;
import org.espalier.stock.ProductCode;
import org.espalier.stock.ReservationService;
import org.espalier.stock.ShelfId;
import org.espalier.stock.StockService;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.espalier.stock.Use;
import org.espalier.stock.UseService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** An operation recorded with a hand scanner, and what the storekeeper sees of it. */
@IntegrationTest
class TreatmentStockBrowserTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);

    /** A slow hand: so long for one scan, one touch or one word. */
    private static final int SECONDS_AN_ACTION = 8;

    private static final int MINUTE = 60;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    UseService uses;

    @Autowired
    PatientService patients;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    VisitService visits;

    @Autowired
    ReservationService reservations;

    @Autowired
    TestCost costs;

    @Autowired
    Ids ids;

    Stocked here;
    UUID surgeon;
    ChildId child;
    LocalDate today;
    String plateCode;
    int actions;

    @BeforeEach
    void aPlannedChildAndAStockedHospital() {
        here = test.empty(new SiteId(network.site()));
        surgeon = network.staff(here.site().value(), "SURGEON");
        child = new ChildId(ids.next());
        var data = new ChildData("Scannedforth", "Cosima", LocalDate.of(2017, 2, 9), Sex.FEMALE, "S-88417");
        network.as(surgeon, () -> patients.register(here.site(), child, data));
        today = treatment().today();
        plateCode = gtin();
        test.as(here, () -> catalogue.addCode(here.plate().id(), new ProductCode(ProductCode.Scheme.GTIN, plateCode)));
        test.arrive(here, here.plate(), here.store(), "PL-1", FAR, 2);
        test.arrive(here, here.screw(), here.tray(), "SC-1", FAR, 3);
        test.arrive(here, here.screw(), here.tray(), "SC-2", FAR, 3);
        var plan = Plan.decided(today, ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL, Deformity.VARUS);
        network.as(surgeon, () -> facts.record(child, new FactId(ids.next()), plan));
        actions = 0;
    }

    @OnEachScreen
    void recordsAPlateByScannerInUnderAMinute(Screen screen) {
        try (var person = signedIn(surgeon, screen)) {
            var page = person.page();
            open(person, "record");
            touch(page.getByText("As planned: Plate placed"), person);
            scan("(01)" + plateCode + "(17)360131(10)PL-1", person);
            scan(here.screw().data().reference(), person);
            scan(here.screw().data().reference(), person);
            assertThat(page.getByText("lot PL-1, to be used until 31‑Jan‑2036")).isVisible();
            assertThat(page.getByText("one of lots SC-1, SC-2, to be used until 31‑Jan‑2036"))
                    .hasCount(2);
            assertThat(page.getByLabel("Pieces")).hasValue("3");
            page.getByLabel("Scan what goes in").scrollIntoViewIfNeeded();
            person.picture("treatment-scanned-" + screen).assertAccessible().assertFits();
            touch(button(page, "Film, in 12 weeks"), person);
            touch(button(page, "Record"), person);
            page.waitForURL(url -> url.endsWith("/treatment"));
            person.settle();
            assertThat(page.getByText("lot PL-1")).isVisible();
            assertThat(page.getByText("one of lots SC-1, SC-2")).hasCount(1);
            page.getByText("MR is what the catalogue says").scrollIntoViewIfNeeded();
            person.picture("treatment-implants-" + screen).assertAccessible().assertFits();
            seesWhatFollowed(person);
        }
        assertThat(actions).isEqualTo(6);
        assertThat(actions * SECONDS_AN_ACTION).isLessThan(MINUTE);
        assertThat(on(here.store())).isEqualTo(1);
        assertThat(on(here.tray())).isEqualTo(4);
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.TETHERED);
        assertThat(dueBy()).isAfter(today);
    }

    @Test
    void theCostAdministratorSeesTheChargeOfTheMinutesByTheClockAndNoName() {
        var administrator = costs.administrator(here.site());
        try (var person = signedIn(surgeon, Screen.PHONE)) {
            var page = person.page();
            open(person, "record");
            touch(page.getByText("As planned: Plate placed"), person);
            scan("(01)" + plateCode + "(17)360131(10)PL-1", person);
            touch(page.getByText("Minutes and note"), person);
            var minutes = page.getByLabel("Minutes in theatre");
            minutes.fill("2000");
            minutes.blur();
            touch(button(page, "Film, in 12 weeks"), person);
            touch(button(page, "Record"), person);
            assertThat(page.getByText("Type whole minutes from 1 to 1440").first())
                    .isVisible();
            minutes.fill("38");
            minutes.blur();
            person.settle().picture("treatment-minutes").assertAccessible().assertFits();
            touch(button(page, "Record"), person);
            page.waitForURL(url -> url.endsWith("/treatment"));
            assertThat(page.getByText("In theatre: 38 min. Under anaesthesia: not recorded."))
                    .isVisible();
        }
        try (var person = Browser.person(port, Screen.DESKTOP, "Scannedforth", "Cosima", "S-88417")) {
            person.signIn(network.login(administrator), network.password(administrator));
            person.open(Urls.COSTS);
            assertThat(person.page().getByText("minutes by the clock, as recorded"))
                    .isVisible();
            assertThat(person.page().getByText("taken from the shelf, by its lot"))
                    .isVisible();
            person.picture("costs-of-scanned");
        }
    }

    /** The shelf is lighter, the physis tethered, the day by which to look again set. */
    private void seesWhatFollowed(Person person) {
        var page = person.page();
        assertThat(page.getByText("Tethered").first()).isVisible();
        person.open(Urls.visits(child.value()));
        assertThat(page.getByText(DateText.of(dueBy())).first()).isVisible();
        person.open(Urls.stockShelf(here.store().value()));
        assertThat(page.locator("tr")
                        .filter(new Locator.FilterOptions().setHasText("PL-1"))
                        .first())
                .containsText("1");
        person.picture("stock-shelf-after-operation");
    }

    private LocalDate dueBy() {
        return network.as(surgeon, () -> visits.of(child))
                .open()
                .orElseThrow()
                .due()
                .lookBy();
    }

    @Test
    void saysWhichPieceIsGoneAndKeepsAllThatWasTyped() {
        var lot = test.as(here, () -> catalogue.lots(here.plate().id())).getFirst();
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            var page = person.page();
            open(person, "record");
            touch(page.getByText("As planned: Plate placed"), person);
            scan("(01)" + plateCode + "(17)360131(10)PL-1", person);
            touch(button(page, "Film, in 12 weeks"), person);
            var other = new Use(ids.next(), here.store(), here.plate().id(), Optional.of(lot.id()), 2, ids.next());
            network.as(surgeon, () -> uses.use(other));
            touch(button(page, "Record"), person);
            assertThat(page.getByText("Nothing was recorded; what you typed is kept"))
                    .isVisible();
            assertThat(page.getByText("None is there.")).isVisible();
            person.picture("treatment-stock-refused").assertAccessible();
            assertThat(treatment().procedures()).isEmpty();
            open(person, "record");
            assertThat(page.getByText("Here is what you typed before.")).isVisible();
            assertThat(page.getByText("lot PL-1, to be used until 31‑Jan‑2036")).isVisible();
            assertThat(button(page, "Taken from no shelf here")).isVisible();
            button(page, "Record").click();
            assertThat(page.getByRole(AriaRole.ALERT).first()).containsText("Say why the piece lay on no shelf");
            person.choose(page.getByLabel("Why from no shelf"), "On loan");
            person.settle().picture("treatment-loan").assertAccessible().assertFits();
            button(page, "Record").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
        }
        var piece = treatment().pieces().in().getFirst().piece();
        assertThat(piece.outside()).isEqualTo(Piece.Outside.LOAN);
        assertThat(network.as(surgeon, () -> uses.ofLot(lot.id())))
                .anySatisfy(use -> assertThat(use.movement()).isEqualTo(piece.movement()));
    }

    @Test
    void takesAPieceFromTheShelvesWithoutAScannerAndSaysWhereItWentWhenItCameOut() {
        try (var person = signedIn(surgeon, Screen.PHONE)) {
            var page = person.page();
            open(person, "record");
            button(page, "As planned: Plate placed – Right distal femur, lateral side")
                    .click();
            person.settle();
            var shelves = page.getByLabel("Or choose from the shelves");
            shelves.click();
            page.getByRole(AriaRole.OPTION).first().click();
            person.settle().picture("treatment-chosen").assertFits();
            button(page, "Wound, in 2 weeks").click();
            button(page, "Record").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
            assertThat(on(here.tray())).isEqualTo(5);
            open(person, "record");
            page.getByText("Plate out – Right distal femur, lateral side").click();
            person.settle();
            assertThat(page.getByLabel("Where went what came out")).isVisible();
            person.choose(page.getByLabel("Where went what came out"), "Disposed of");
            button(page, "Wound, in 2 weeks").click();
            person.settle().picture("treatment-fate").assertAccessible().assertFits();
            button(page, "Record").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
            assertThat(page.getByText("Where it went: Disposed of")).isVisible();
            page.getByText("Where it went: Disposed of").scrollIntoViewIfNeeded();
            person.settle().picture("treatment-out");
            takesOutWhatHoldsACutBone(person);
        }
        assertThat(treatment().pieces().out().getFirst().fate()).isEqualTo(Explant.Fate.DISPOSED);
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.RELEASED);
    }

    private void takesOutWhatHoldsACutBone(Person person) {
        var lot = test.as(here, () -> catalogue.lots(here.plate().id()))
                .getFirst()
                .id();
        var plate = Piece.ofShelf(Piece.Role.BODY, here.plate().id(), "bone plate", here.store(), Optional.of(lot));
        var cut = Act.of(ProcedureKind.OSTEOTOMY, TIBIA, null, null, "bone plate", 1)
                .withPieces(List.of(plate));
        network.as(surgeon, () -> treatments.record(child, new ProcedureId(ids.next()), TestTreatment.of(today, cut)));
        var page = person.page();
        open(person, "record");
        page.getByText("Fixation out (what holds a cut bone) – Right proximal tibia")
                .click();
        person.settle();
        assertThat(page.getByLabel("Pieces")).hasValue("1");
        person.choose(page.getByLabel("Where went what came out"), "The family keeps it");
        button(page, "Wound, in 2 weeks").click();
        person.settle().picture("treatment-fixation-out").assertAccessible().assertFits();
        button(page, "Record").click();
        page.waitForURL(url -> url.endsWith("/treatment"));
        page.getByText("Other pieces that came out").scrollIntoViewIfNeeded();
        assertThat(page.getByText("Where it went: The family keeps it")).isVisible();
        person.settle().picture("treatment-other-pieces-out").assertAccessible().assertFits();
    }

    @OnEachScreen
    void keepsSizesAndASetForBrokenScrewsReadyAndSaysWhatIsMissing(Screen screen) {
        var plan = treatment().waiting().getFirst();
        var day = today.plusDays(6);
        var listed = plan.plan().listed(today, day, null);
        network.as(
                surgeon, () -> facts.replace(child, plan.id(), new FactId(ids.next()), listed, "theatre has a place"));
        try (var person = signedIn(surgeon, screen)) {
            var page = person.page();
            open(person, "");
            assertThat(page.getByText("Nothing is kept ready for it.")).isVisible();
            button(page, "Keep implants and drivers ready").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            button(dialog, "Keep ready").click();
            assertThat(dialog.getByText("Say at least one thing that is to be ready."))
                    .isVisible();
            dialog.getByLabel("Plates").fill("1");
            dialog.getByLabel("Screws", new Locator.GetByLabelOptions().setExact(true))
                    .fill("2");
            dialog.getByLabel("A set for broken screws").check();
            person.settle()
                    .picture("treatment-ready-" + screen)
                    .assertAccessible()
                    .assertFits();
            button(dialog, "Keep ready").click();
            person.settle();
            assertThat(page.getByText("Plate, 1: there")).isVisible();
            assertThat(page.getByText("Rescue set, 1: 1 missing")).isVisible();
            person.picture("treatment-kept-" + screen).assertAccessible().assertFits();
            person.open("theatre?day=" + day);
            assertThat(page.getByText("Rescue set, 1: 1 missing")).isVisible();
            person.picture("theatre-kept-" + screen).assertAccessible().assertFits();
        }
        var act = Act.of(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL, TestTreatment.implant(), "plate", 3);
        network.as(surgeon, () -> treatments.record(child, new ProcedureId(ids.next()), TestTreatment.of(today, act)));
        assertThat(network.as(surgeon, () -> reservations.open(here.site()))).isEmpty();
    }

    @Test
    void asksForTheDriverOfAPlatePlacedElsewhereYearsAgo() {
        var act = Act.of(ProcedureKind.PLATE_PLACED, TIBIA, PlateSide.LATERAL, TestTreatment.implant(), "plate", 3);
        var years = today.minusYears(4);
        var elsewhere =
                new ProcedureData(years, true, null, null, List.of(act), new NextLook(years.plusDays(90), "film"));
        network.as(surgeon, () -> treatments.record(child, new ProcedureId(ids.next()), elsewhere));
        var out = Plan.decided(today, ProcedureKind.PLATE_OUT, TIBIA, PlateSide.LATERAL, null);
        network.as(surgeon, () -> facts.record(child, new FactId(ids.next()), out));
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            open(person, "");
            button(person.page(), "Keep implants and drivers ready").last().click();
            var dialog = person.page().getByRole(AriaRole.DIALOG);
            assertThat(dialog.getByText("its driver is not known here")).isVisible();
            assertThat(dialog.getByLabel("A set for broken screws")).not().isChecked();
            person.settle().picture("treatment-ready-removal").assertAccessible();
        }
    }

    @Test
    void showsAStorekeeperWhatWasUsedAndNoName() {
        var piece = Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw", here.tray(), Optional.empty());
        var act = Act.of(
                        ProcedureKind.PLATE_PLACED,
                        FEMUR,
                        PlateSide.LATERAL,
                        TestTreatment.implant(),
                        "plate, screw",
                        2)
                .withPieces(List.of(piece));
        var placed = new ProcedureId(ids.next());
        network.as(surgeon, () -> treatments.record(child, placed, TestTreatment.of(today, act)));
        network.as(
                surgeon,
                () -> treatments.withdraw(
                        child, placed, new ProcedureId(ids.next()), "meant for Cosima Scannedforth’s brother"));
        var lot = test.as(here, () -> catalogue.lots(here.screw().id())).getFirst();
        try (var keeper = Browser.person(port, Screen.DESKTOP, "Scannedforth", "Cosima", "S-88417")) {
            keeper.signIn(network.login(here.keeper()), network.password(here.keeper()));
            for (var url : List.of(
                    Urls.TODAY,
                    Urls.STOCK,
                    Urls.STOCK_MOVE,
                    Urls.STOCK_NEEDS,
                    Urls.STOCK_PRODUCTS,
                    Urls.SAFETY,
                    Urls.stockShelf(here.tray().value()),
                    Urls.stockProduct(here.screw().id().value()),
                    Urls.stockLot(lot.id().value()))) {
                keeper.open(url);
                assertThat(keeper.page().locator("h1").first()).isVisible();
            }
            keeper.picture("stock-lot-of-operation");
        }
    }

    /** A number with its check digit that no other test uses. */
    private static String gtin() {
        var digits =
                String.format("%013d", Math.floorMod(UUID.randomUUID().getMostSignificantBits(), 1_000_000_000_000L));
        int sum = 0;
        for (int at = 0; at < digits.length(); at++) {
            sum += (digits.charAt(at) - '0') * (at % 2 == 0 ? 3 : 1);
        }
        return digits + (10 - sum % 10) % 10;
    }

    /** A hand scanner types where the cursor stands, and ends with Enter. */
    private void scan(String code, Person person) {
        person.page().keyboard().type(code);
        person.page().keyboard().press("Enter");
        person.settle();
        actions++;
    }

    private void touch(Locator locator, Person person) {
        locator.click();
        person.settle();
        actions++;
    }

    private Treatment treatment() {
        return network.as(surgeon, () -> treatments.of(child));
    }

    private int on(ShelfId shelf) {
        return test.as(here, () -> stock.on(shelf)).stream()
                .mapToInt(line -> line.quantity())
                .sum();
    }

    private void open(Person person, String part) {
        person.open("child/" + child.value() + "/treatment" + (part.isEmpty() ? "" : "/" + part));
    }

    private Person signedIn(UUID staff, Screen screen) {
        return Browser.person(port, screen).signIn(network.login(staff), network.password(staff));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator button(Locator within, String name) {
        return within.getByRole(
                AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(name).setExact(true));
    }
}
