package org.espalier.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.MultiFormatWriter;
import com.google.zxing.client.j2se.MatrixToImageWriter;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Ids;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What a storekeeper does in a day, at the screen and with a phone in the hand. */
@IntegrationTest
class StorekeeperDayBrowserTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);
    private static final String GTIN = "09506000134383";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    UseService uses;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    ReservationService reservations;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    Stocked here;

    @BeforeEach
    void stocked() {
        here = test.empty(new SiteId(network.site()));
    }

    @Test
    void readsALabelFromAPhotoAndSaysWhenThereIsNone() throws Exception {
        test.as(here, () -> catalogue.addCode(here.plate().id(), new ProductCode(ProductCode.Scheme.GTIN, GTIN)));
        try (var keeper = keeper(here, Screen.PHONE)) {
            keeper.open(Urls.STOCK_MOVE);
            var photo = keeper.page().locator(".label-photo input[type=file]").first();
            assertThat(keeper.page()
                            .locator(".label-photo vaadin-upload")
                            .first()
                            .getAttribute("capture"))
                    .isEqualTo("environment");
            photo.setInputFiles(new FilePayload("label.png", "image/png", label()));
            var lot = keeper.page().getByLabel(Texts.text("stock.lot"), exact()).first();
            keeper.page().waitForCondition(() -> lot.inputValue().equals("P-9"));
            keeper.settle();
            assertThat(keeper.page()
                            .getByLabel(Texts.text("stock.expires"), exact())
                            .first()
                            .inputValue())
                    .isEqualTo("31-Jan-2036");
            keeper.picture("stock-photo-phone").assertAccessible().assertFits();
            photo.setInputFiles(
                    new FilePayload("note.png", "image/png", "no picture".getBytes(StandardCharsets.UTF_8)));
            keeper.page()
                    .getByText(Texts.text("stock.photo.no-picture"))
                    .first()
                    .waitFor();
            assertThat(lot.inputValue()).as("nothing of the label before").isEmpty();
            keeper.picture("stock-photo-none-phone").assertFits();
        }
    }

    @Test
    void keepsWhatWasTypedWhenItIsRefused() {
        test.arrive(here, here.plate(), here.store(), "K-1", FAR, 1);
        try (var keeper = keeper(here, Screen.DESKTOP)) {
            keeper.open(Urls.STOCK_MOVE);
            var in = section(keeper, "stock.came-in");
            in.getByLabel(Texts.text("stock.scan")).fill(here.plate().data().reference());
            in.getByLabel(Texts.text("stock.scan")).press("Enter");
            keeper.settle();
            in.getByLabel(Texts.text("stock.lot")).fill("K-1");
            in.getByLabel(Texts.text("stock.expires")).fill("30 Jan 2036");
            in.getByLabel(Texts.text("stock.pieces")).fill("7");
            in.getByLabel(Texts.text("stock.pieces")).press("Tab");
            press(keeper, "stock.take-in");
            assertThat(keeper.page().content()).contains(Texts.of(StockRefusal.Reason.EXPIRY_DIFFERS));
            assertThat(in.getByLabel(Texts.text("stock.pieces")).inputValue()).isEqualTo("7");
            in.getByLabel(Texts.text("stock.expires")).fill("31 Jan 2036");
            in.getByLabel(Texts.text("stock.expires")).press("Tab");
            press(keeper, "stock.take-in");
            assertThat(keeper.page().content()).contains(Texts.text("stock.taken-in"));
        }
        assertThat(quantity(here, here.store())).isEqualTo(8);
    }

    @Test
    void sendsGoodsThatAColleagueSignsForOntoTheShelfOfTheirChoice() {
        var there = test.empty(new SiteId(network.site()));
        test.arrive(here, here.plate(), here.store(), "T-1", FAR, 5);
        var theirs = test.as(there, () -> sites.get(there.site())).name();
        try (var keeper = keeper(here, Screen.DESKTOP)) {
            keeper.open(Urls.STOCK_MOVE);
            var carry = section(keeper, "stock.carry");
            carry.getByLabel(Texts.text("stock.scan")).fill(here.plate().data().reference());
            carry.getByLabel(Texts.text("stock.scan")).press("Enter");
            keeper.settle();
            carry.getByLabel(Texts.text("stock.pieces")).fill("2");
            choose(keeper, carry, "stock.onto", Texts.text("stock.send-to", theirs));
            keeper.picture("stock-send-desktop");
            press(keeper, "stock.carry-now");
            keeper.open(Urls.STOCK);
            var way = section(keeper, "stock.on-the-way");
            assertThat(way.innerText()).contains(Texts.text("stock.goods-of", 2), theirs);
            assertThat(way.getByText(Texts.text("stock.sign-for")).count())
                    .as("who sent them does not sign")
                    .isZero();
            keeper.picture("stock-sent-desktop").assertAccessible().assertFits();
        }
        try (var colleague = keeper(there, Screen.PHONE)) {
            colleague.open(Urls.STOCK);
            var way = section(colleague, "stock.on-the-way");
            choose(
                    colleague,
                    way,
                    "stock.lay-onto",
                    String.valueOf(shelf(there, there.tray()).name()));
            way.scrollIntoViewIfNeeded();
            colleague.picture("stock-sign-for-phone").assertAccessible().assertFits();
            press(colleague, "stock.sign-for");
            assertThat(colleague.page().content()).contains(Texts.text("stock.received"));
        }
        assertThat(quantity(here, here.store())).isEqualTo(3);
        assertThat(quantity(there, there.tray())).isEqualTo(2);
    }

    @Test
    void printsASheetAndMakesATrayReady() {
        test.arrive(here, here.screw(), here.tray(), "M-1", FAR, 4);
        test.arrive(here, here.screw(), here.tray(), "M-2", FAR, 4);
        try (var keeper = keeper(here, Screen.DESKTOP)) {
            keeper.open(Urls.stockShelf(here.tray().value()));
            press(keeper, "stock.to-sterilise");
            assertThat(shelf(here, here.tray()).sterilising()).isTrue();
            keeper.picture("stock-tray-desktop").assertAccessible();
            press(keeper, "stock.tray-is-back");
            assertThat(shelf(here, here.tray()).sterilising()).isFalse();
            press(keeper, "stock.count");
            keeper.page().evaluate("window.print = () => { document.title = 'printed'; }");
            press(keeper, "stock.count.print");
            keeper.page().waitForCondition(() -> keeper.page().title().equals("printed"));
            keeper.page()
                    .emulateMedia(
                            new Page.EmulateMediaOptions().setMedia(com.microsoft.playwright.options.Media.PRINT));
            assertThat(keeper.page().locator(".only-printed").innerText()).contains("Counted by");
            assertThat(keeper.page().locator(".house-top").isVisible()).isFalse();
            keeper.picture("stock-sheet-print");
        }
    }

    @Test
    void seesThatATrayOnLoanWasToGoBack() {
        var yesterday =
                DateText.of(test.as(here, () -> sites.today(here.site())).minusDays(1));
        try (var keeper = keeper(here, Screen.DESKTOP)) {
            keeper.open(Urls.stockShelf(here.tray().value()));
            var change = section(keeper, "stock.change-shelf");
            change.getByLabel(Texts.text("stock.back-by")).fill(yesterday);
            change.getByLabel(Texts.text("stock.back-by")).press("Tab");
            press(keeper, "stock.save");
            assertThat(keeper.page().content()).contains(Texts.text("stock.back-by.whose"));
            change.getByLabel(Texts.text("stock.owner-label")).fill("Invented lender");
            press(keeper, "stock.save");
            assertThat(shelf(here, here.tray()).owner()).isEqualTo("Invented lender");
            keeper.picture("stock-loan-desktop").assertAccessible().assertFits();
            keeper.open(Urls.STOCK);
            assertThat(keeper.page().content()).contains(Texts.text("stock.owner-late", "Invented lender", yesterday));
            keeper.picture("stock-loan-late-desktop").assertAccessible();
        }
    }

    @Test
    void seesWhatRunsShortWhatExpiresUnusedAndTheArithmeticOfAnOrder() {
        var today = test.as(here, () -> sites.today(here.site()));
        var soon = today.plusDays(60);
        test.arrive(here, here.plate(), here.store(), "E-1", soon, 6);
        test.arrive(here, here.screw(), here.store(), "E-2", FAR, 20);
        var surgeon = network.staff(here.site().value(), "SURGEON");
        var screws = test.as(here, () -> catalogue.lots(here.screw().id())).getFirst();
        for (int operation = 0; operation < 3; operation++) {
            var use = new Use(ids.next(), here.store(), here.screw().id(), Optional.of(screws.id()), 4, ids.next());
            network.as(surgeon, () -> uses.use(use));
        }
        var planned = new Reservation(
                ids.next(), here.site(), ids.next(), today.plusDays(3), List.of(Need.of(here.screw(), 10)));
        test.as(here, () -> {
            reservations.reserve(planned);
            return planned;
        });
        for (var screen : new Screen[] {Screen.DESKTOP, Screen.PHONE}) {
            var name = screen.name().toLowerCase(java.util.Locale.ROOT);
            try (var keeper = keeper(here, screen)) {
                keeper.open(Urls.TODAY);
                var missing = keeper.page().getByText("2 of 10 missing");
                keeper.picture("today-short-" + name).assertFits().assertAccessible();
                missing.click();
                keeper.at(Urls.STOCK_NEEDS);
                keeper.open(Urls.STOCK);
                assertThat(section(keeper, "stock.short").locator("td.number").allInnerTexts())
                        .containsExactly("10", "2");
                var expiring = section(keeper, new Page.GetByRoleOptions().setName(Pattern.compile("^Expires within")));
                assertThat(expiring.locator("td.number").allInnerTexts())
                        .as("pieces, used in a year, left unused, what one cost")
                        .containsExactly("6", "0", "6", "EUR 10.00");
                expiring.scrollIntoViewIfNeeded();
                keeper.picture("stock-expiring-" + name).assertFits().assertAccessible();
                keeper.open(Urls.STOCK_NEEDS);
                var orders = section(keeper, "stock.orders");
                assertThat(orders.innerText()).contains("3 operations in a year", "3 × 4");
                orders.locator("table").scrollIntoViewIfNeeded();
                keeper.picture("stock-orders-" + name).assertFits().assertAccessible();
            }
        }
    }

    private static byte[] label() throws Exception {
        var bytes = new ByteArrayOutputStream();
        var code = "\u00f101" + GTIN + "17360131" + "10P-9";
        MatrixToImageWriter.writeToStream(
                new MultiFormatWriter().encode(code, BarcodeFormat.CODE_128, 900, 200), "png", bytes);
        return bytes.toByteArray();
    }

    private Person keeper(Stocked stocked, Screen screen) {
        var person = Browser.person(port, screen);
        return person.signIn(network, stocked.keeper());
    }

    private static Page.GetByLabelOptions exact() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static Locator section(Person person, String heading) {
        return section(
                person, new Page.GetByRoleOptions().setName(Texts.text(heading)).setExact(true));
    }

    private static Locator section(Person person, Page.GetByRoleOptions heading) {
        return person.page()
                .locator("section")
                .filter(new Locator.FilterOptions().setHas(person.page().getByRole(AriaRole.HEADING, heading)));
    }

    private static void choose(Person person, Locator within, String label, String option) {
        var list = within.locator("vaadin-select").filter(new Locator.FilterOptions().setHasText(Texts.text(label)));
        person.choose(list, option);
    }

    private static void press(Person person, String key) {
        button(person.page(), Texts.text(key)).click();
        person.settle();
    }

    private Shelf shelf(Stocked stocked, ShelfId shelf) {
        return test.as(stocked, () -> stock.shelf(shelf)).orElseThrow();
    }

    private int quantity(Stocked stocked, ShelfId shelf) {
        return test.as(stocked, () -> stock.on(shelf)).stream()
                .mapToInt(ShelfLine::quantity)
                .sum();
    }
}
