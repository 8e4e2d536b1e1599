package org.espalier.stock;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.espalier.access.SiteId;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A storekeeper at work, who meets no child's name on any screen. */
@IntegrationTest
class StockBrowserTests {

    private static final String GTIN = "09506000134376";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    CatalogueService catalogue;

    @Test
    void takesInCarriesAndCountsByScannerAndKeyboard() {
        var here = test.empty(new SiteId(network.site()));
        test.as(here, () -> catalogue.addCode(here.plate().id(), new ProductCode(ProductCode.Scheme.GTIN, GTIN)));
        try (var keeper = keeper(here, Screen.DESKTOP)) {
            keeper.open(Urls.STOCK_MOVE);
            var page = keeper.page();
            var in = page.locator("section")
                    .filter(new com.microsoft.playwright.Locator.FilterOptions()
                            .setHas(page.getByRole(
                                    AriaRole.HEADING,
                                    new Page.GetByRoleOptions().setName(Texts.text("stock.came-in")))));
            in.getByLabel(Texts.text("stock.scan")).fill("(01)" + GTIN + "(17)360131(10)L-77");
            in.getByLabel(Texts.text("stock.scan")).press("Enter");
            keeper.settle();
            assertThat(in.getByLabel(Texts.text("stock.lot")).inputValue()).isEqualTo("L-77");
            assertThat(in.getByLabel(Texts.text("stock.expires")).inputValue()).isEqualTo("31-Jan-2036");
            in.getByLabel(Texts.text("stock.pieces")).fill("5");
            in.getByLabel(Texts.text("stock.unit-cost")).fill("12.50");
            in.getByLabel(Texts.text("stock.currency")).fill("EUR");
            keeper.settle().picture("stock-take-in-desktop");
            press(keeper, "stock.take-in");
            assertThat(page.getByText(Texts.text("stock.taken-in"))).isVisible();
            keeper.assertAccessible().assertFits();
            assertThat(quantity(here, here.store())).isEqualTo(5);

            keeper.open(Urls.stockShelf(here.store().value()));
            press(keeper, "stock.count");
            var field = page.getByLabel(java.util.regex.Pattern.compile("Counted of Invented plate"));
            field.fill("4");
            field.press("Tab");
            keeper.settle().picture("stock-count-desktop");
            press(keeper, "stock.count.close");
            keeper.assertAccessible().picture("stock-counted-desktop");
            assertThat(quantity(here, here.store())).isEqualTo(4);
        }
    }

    @Test
    void seesEveryScreenOfTheStockAndNoName() {
        var hospital = world.hospital();
        var keeper = network.staff(hospital.site().value(), "STOREKEEPER");
        var other = test.empty(new SiteId(network.site()));
        network.member(other.keeper(), hospital.site().value(), "STOREKEEPER");
        var product = network.as(keeper, () -> stock.latest(hospital.site()))
                .getFirst()
                .product();
        var lot = network.as(keeper, () -> catalogue.lots(product.id())).getFirst();
        for (var screen : new Screen[] {Screen.DESKTOP, Screen.PHONE}) {
            try (var person = Browser.person(port, screen, TestWorld.CHILD.familyName(), "CANARY-7731")) {
                person.signIn(network, keeper);
                for (var url : new String[] {
                    Urls.STOCK,
                    Urls.STOCK_MOVE,
                    Urls.STOCK_NEEDS,
                    Urls.STOCK_PRODUCTS + "?find=" + product.data().reference(),
                    Urls.stockProduct(product.id().value()),
                    Urls.stockLot(lot.id().value())
                }) {
                    person.open(url);
                    assertThat(person.page().locator("h1").first()).isVisible();
                    person.picture("stock-" + url.replaceAll("\\?.*", "").replace('/', '-') + "-"
                            + screen.name().toLowerCase(java.util.Locale.ROOT));
                    person.assertFits().assertAccessible();
                }
            }
        }
    }

    private Person keeper(Stocked here, Screen screen) {
        var person = Browser.person(port, screen);
        return person.signIn(network, here.keeper());
    }

    private static void press(Person person, String key) {
        button(person.page(), Texts.text(key)).click();
        person.settle();
    }

    private int quantity(Stocked here, ShelfId shelf) {
        return test.as(here, () -> stock.on(shelf)).stream()
                .mapToInt(ShelfLine::quantity)
                .sum();
    }
}
