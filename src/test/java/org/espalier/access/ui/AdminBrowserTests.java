package org.espalier.access.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.UUID;
import org.assertj.core.api.Assertions;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class AdminBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @OnEachScreen
    void operatorAddsAPersonWhoThenSignsInAndMustChooseAPassword(Screen screen) {
        var login = "newcomer-" + screen.name().toLowerCase(java.util.Locale.ROOT);
        String password;
        try (var operator = signedIn(network.operator(), screen)) {
            var page = operator.page();
            operator.open("admin");
            button(page, "Add the hospital").click();
            assertThat(page.getByText("Use 2 to 12 capital letters and digits."))
                    .isVisible();
            operator.settle()
                    .picture("admin-errors-" + screen)
                    .assertAccessible()
                    .assertFits();

            page.getByLabel("Name to sign in with").fill(login);
            page.getByLabel("Name as colleagues read it").fill("Wendeline Oakhollow");
            button(page, "Add the person").click();
            var told = page.getByText("First password of Wendeline Oakhollow");
            assertThat(told).isVisible();
            password = told.textContent().replaceAll(".*: ([a-z0-9-]{19})\\..*", "$1");
            operator.settle().picture("admin-" + screen).assertAccessible().assertFits();
            if (screen == Screen.DESKTOP) {
                demandsASecondFactorOfOperatorsToo(operator);
                changesTheNameOfAHospital(operator);
            }
        }
        try (var newcomer = Browser.person(port, screen)) {
            newcomer.signIn(login, password);
            assertThat(newcomer.page().getByText("Choose a password of your own."))
                    .isVisible();
        }
    }

    @OnEachScreen
    void isToldWhereToGoFromAPageThatIsNotTheirs(Screen screen) {
        try (var operator = signedIn(network.operator(), screen)) {
            operator.open("admin/access-log");
            assertThat(operator.page().locator(".house-top nav [aria-current=page]"))
                    .hasText("Access log");
            operator.open("recall")
                    .picture("no-such-place-" + screen)
                    .assertAccessible()
                    .assertFits();
            assertThat(operator.page().getByText("There is no such page here")).isVisible();
            operator.page().getByText("Go to what waits for you").click();
            assertThat(operator.page().getByText("What waits for you")).isVisible();
            var answer = operator.page().navigate("http://localhost:" + port + "/stock/nowhere");
            Assertions.assertThat(answer.status()).isEqualTo(403);
            operator.picture("no-such-address-" + screen).assertAccessible().assertFits();
            operator.page().getByText("Go to what waits for you").click();
            assertThat(operator.page().getByText("What waits for you")).isVisible();
            operator.settle().page().context().clearCookies();
            operator.page().getByText("Access log").click();
            assertThat(operator.page().getByText("You are signed in no longer")).isVisible();
            operator.picture("signed-in-no-longer-" + screen).assertAccessible().assertFits();
            operator.page().keyboard().press("Escape");
            operator.page().waitForURL(url -> url.contains("login"));
        }
    }

    private static void demandsASecondFactorOfOperatorsToo(Browser.Person operator) {
        var box = operator.page().getByLabel("Operators of the network need a second factor, too");
        box.check();
        operator.settle().open("admin");
        assertThat(box).isChecked();
        box.uncheck();
        operator.settle().open("admin");
        assertThat(box).not().isChecked();
    }

    private void changesTheNameOfAHospital(Browser.Person operator) {
        var name = network.owner()
                .sql("select name from site where id = ?")
                .param(network.site())
                .query(String.class)
                .single();
        var page = operator.open("admin").page();
        page.getByLabel("Find a hospital by a part of its name or code").fill(name);
        assertThat(page.locator(".admin-list").first().locator("> li")).hasCount(1);
        page.getByLabel("Change " + name, new Page.GetByLabelOptions().setExact(true))
                .click();
        var dialog = page.getByRole(AriaRole.DIALOG);
        dialog.getByLabel("Time zone").fill("nowhere");
        button(page, "Save").click();
        assertThat(page.getByText("Write a time zone as in Europe/Lisbon.")).isVisible();
        dialog.getByLabel("Time zone").fill("Europe/Athens");
        dialog.getByLabel("Name").fill("Renamed " + name);
        operator.settle().picture("admin-hospital-DESKTOP").assertAccessible();
        button(page, "Save").click();
        assertThat(page.getByText("Renamed " + name).first()).isVisible();
        assertThat(page.getByText("Europe/Athens").first()).isVisible();
    }

    @Test
    void operatorIssuesAKeyThatIsShownOnce() {
        var name = network.owner()
                .sql("select name from site where id = ?")
                .param(network.site())
                .query(String.class)
                .single();
        try (var operator = signedIn(network.operator(), Screen.DESKTOP)) {
            var page = operator.page();
            operator.open("admin");
            var keys = page.locator("section")
                    .filter(new com.microsoft.playwright.Locator.FilterOptions().setHasText("Keys of archives"));
            operator.choose(keys.locator("vaadin-select"), name);
            page.getByLabel("What the archive is called").fill("Archive of the cellar");
            button(page, "Issue a key").click();
            assertThat(page.getByText("The key: espalier_")).isVisible();
            operator.open("admin");
            assertThat(page.getByText("Archive of the cellar").first()).isVisible();
            assertThat(page.getByText("The key: espalier_")).hasCount(0);
        }
    }

    @OnEachScreen
    void privacyOfficerReadsWhoSawWhatAndChecksTheSeals(Screen screen) {
        var officer = network.staff(network.site(), "PRIVACY_OFFICER");
        try (var person = signedIn(officer, screen)) {
            var page = person.page();
            person.open("admin/access-log");
            assertThat(page.getByText("Signed in").first()).isVisible();
            button(page, "Check the seals").click();
            assertThat(page.getByText("nothing sealed was changed")).isVisible();
            person.settle().picture("access-log-" + screen).assertAccessible().assertFits();
            page.getByLabel("Local number of a child").fill("nobody-has-this");
            button(page, "Who saw this child?").click();
            assertThat(page.getByText("No child at your hospitals has number nobody-has-this"))
                    .isVisible();
        }
    }

    private Browser.Person signedIn(UUID who, Screen screen) {
        return Browser.person(port, screen).signIn(network.login(who), network.password(who));
    }

    private static com.microsoft.playwright.Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
