package org.espalier.patient;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class ChildrenBrowserTests {

    private static final String CANARY = "Zaunkoenig-7741";

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Ids ids;

    SiteId site;
    UUID nurse;

    @BeforeEach
    void aHospitalBesideAnother() {
        site = new SiteId(network.site());
        nurse = network.staff(site.value(), "NURSE");
        var elsewhere = new SiteId(network.site());
        var colleague = network.staff(elsewhere.value(), "NURSE");
        register(elsewhere, colleague, CANARY, "Zara", CANARY);
    }

    @OnEachScreen
    void registersFindsAndChangesAChild(Screen screen) {
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("children");
            assertThat(page.getByText("No child is registered at")).isVisible();
            person.picture("children-empty-" + screen).assertAccessible().assertFits();

            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Register a child"))
                    .click();
            button(page, "Register").click();
            assertThat(page.getByRole(AriaRole.ALERT)).containsText("There are 3 things to mend");
            person.settle()
                    .picture("child-new-errors-" + screen)
                    .assertAccessible()
                    .assertFits();

            page.getByLabel("Family name").fill("Featherstonehaugh-Quillingworth");
            page.getByLabel("Given name").fill("Maximiliane Theodora");
            page.getByLabel("Date of birth").fill("4/7/2019");
            page.keyboard().press("Tab");
            assertThat(page.getByText("Which day is meant?")).isVisible();
            person.settle().assertAccessible().picture("child-new-ambiguous-" + screen);
            button(page, "4 July 2019").click();
            page.getByLabel("Female").check();
            page.getByLabel("Local number").fill("40317");
            person.settle().picture("child-new-filled-" + screen);
            button(page, "Register").click();
            page.waitForURL(url -> url.contains("course/"));

            var child = page.url().replaceAll(".*/", "");
            finds(person, screen);
            changes(child, person, screen);
        }
    }

    private static void finds(Person person, Screen screen) {
        var page = person.page();
        person.open("children");
        page.getByLabel("Find a child").fill("featherstonehaug");
        assertThat(page.getByText("1 child")).isVisible();
        person.settle().picture("children-found-" + screen).assertAccessible().assertFits();
        page.getByLabel("Find a child").fill("Zaunkoenig");
        assertThat(page.getByText("Nobody like that at")).isVisible();
        person.settle().picture("children-nobody-" + screen).assertAccessible().assertFits();
    }

    private static void changes(String child, Person person, Screen screen) {
        var page = person.page();
        person.open("child/" + child + "/edit");
        assertThat(page.getByLabel("The child this page is about"))
                .containsText("FEATHERSTONEHAUGH-QUILLINGWORTH, Maximiliane Theodora");
        page.getByLabel("Given name").fill("Max");
        person.settle().picture("child-edit-" + screen).assertAccessible().assertFits();
        button(page, "Save").click();
        assertThat(page.getByText("Saved.")).isVisible();
        assertThat(page.getByLabel("The child this page is about"))
                .containsText("FEATHERSTONEHAUGH-QUILLINGWORTH, Max");
    }

    @OnEachScreen
    void listsAPageAtATimeInTheOrderOfTheAddress(Screen screen) {
        for (int number = 100; number < 152; number++) {
            register(site, nurse, "Family" + number, "Given", "N-" + number);
        }
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("children?order=latest");
            assertThat(page.getByText("50 children")).isVisible();
            assertThat(page.locator(".child-links a").first()).containsText("FAMILY151, Given");
            person.picture("children-" + screen).assertAccessible().assertFits();
            button(page, "Show more").click();
            assertThat(page.getByText("52 children")).isVisible();
            assertThat(page.locator(".child-links a").last()).containsText("FAMILY100, Given");
            assertThat(button(page, "Show more")).isHidden();
        }
    }

    @Test
    void keepsWhatWasTypedThroughALostPage() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open("children/new");
            page.getByLabel("Family name").fill("Interrupted");
            page.getByLabel("Date of birth").fill("not yet a date");
            page.keyboard().press("Tab");
            await().until(() -> kept().contains("Interrupted") && kept().contains("not yet a date"));
            var address = page.url();
            page.navigate("about:blank");
            page.navigate(address);
            person.settle();
            assertThat(page.getByLabel("Family name")).hasValue("Interrupted");
            assertThat(page.getByLabel("Date of birth")).hasValue("not yet a date");
            person.open("children/new");
            assertThat(page.getByText("You began to register Interrupted")).isVisible();
        }
    }

    @OnEachScreen
    void asksWhetherAChildIsRegisteredAlready(Screen screen) {
        register(site, nurse, "Twin", "Tessa", "T-1");
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("children/new");
            fill(page, "Twyn", "Tessa", "14 Jul 2019", "T-2");
            button(page, "Register").click();
            assertThat(page.getByText("Is it one of these?")).isVisible();
            person.settle().assertAccessible().assertFits().picture("child-new-alike-" + screen);
            button(page, "It is another child: register").click();
            page.waitForURL(url -> url.contains("course/"));
        }
    }

    @OnEachScreen
    void setsTheirsBesideMine(Screen screen) {
        var child = register(site, nurse, "Shared", "Sam", "S-1");
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("child/" + child.id().value() + "/edit");
            page.getByLabel("Given name").fill("Samuel");
            page.getByLabel("Local number").fill("S-2");
            var colleague = network.staff(site.value(), "SURGEON");
            var theirs = new ChildData("Shared", "Samira", LocalDate.of(2019, 7, 14), Sex.FEMALE, "S-1");
            network.as(colleague, () -> patients.change(child.id(), 1, theirs));
            button(page, "Save").click();
            assertThat(page.getByText("Somebody else changed this child meanwhile"))
                    .isVisible();
            person.settle()
                    .picture("child-edit-conflict-" + screen)
                    .assertAccessible()
                    .assertFits();
            button(page, "Save what is chosen").click();
            assertThat(page.getByText("Choose one of the two.")).isVisible();
            page.getByLabel("Theirs: Samira").check();
            button(page, "Save what is chosen").click();
            assertThat(page.getByText("Saved.")).isVisible();
            assertThat(page.getByLabel("Local number")).hasValue("S-2");
            assertThat(page.getByLabel("Given name")).hasValue("Samira");
        }
    }

    @OnEachScreen
    void writesDownCorrectsAndWithdrawsFindings(Screen screen) {
        var child = register(site, nurse, "Measured", "Mia", "M-1");
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open("child/" + child.id().value() + "/examination");
            person.picture("examination-empty-" + screen).assertAccessible().assertFits();
            var sizes = page.locator("section.sheet")
                    .filter(new com.microsoft.playwright.Locator.FilterOptions()
                            .setHas(page.getByRole(
                                    AriaRole.HEADING,
                                    new Page.GetByRoleOptions()
                                            .setName("Height and weight")
                                            .setExact(true))));
            button(sizes, "Add height or weight").click();
            button(sizes, "Write down").click();
            assertThat(sizes.getByRole(AriaRole.ALERT)).isVisible();
            sizes.getByLabel("Date").fill("6 May 2024");
            sizes.getByLabel("Height").fill("121,5");
            sizes.getByLabel("Weight").fill("24");
            button(sizes, "Write down").click();
            assertThat(sizes.getByRole(AriaRole.TABLE)).containsText("121.5 cm");
            person.settle().picture("examination-" + screen);
            button(sizes, "Correct").click();
            assertThat(sizes.getByLabel("Height")).hasValue("121.5");
            sizes.getByLabel("Height").fill("112,5");
            sizes.getByLabel("Why").fill("digits swapped");
            button(sizes, "Write down the correction").click();
            assertThat(sizes.getByRole(AriaRole.TABLE)).containsText("digits swapped");
            assertThat(sizes.getByRole(AriaRole.TABLE)).containsText("112.5 cm");
            button(sizes, "Withdraw").click();
            page.getByRole(AriaRole.DIALOG).getByLabel("Why").fill("another child");
            person.settle().assertAccessible().picture("examination-withdraw-" + screen);
            button(page.getByRole(AriaRole.DIALOG), "Withdraw").click();
            assertThat(sizes.getByRole(AriaRole.STATUS)).hasText("Withdrawn.");
            sizes.scrollIntoViewIfNeeded();
            assertThat(page.getByLabel("The child this page is about")).isInViewport();
            person.settle()
                    .picture("examination-withdrawn-" + screen)
                    .assertAccessible()
                    .assertFits();
        }
    }

    @Test
    void showsNothingOfAChildOfAnotherHospital() {
        var stranger = network.staff(network.site(), "SURGEON");
        var child = register(site, nurse, "Hidden-5523", "Hanna", "Hidden-5523");
        try (var person = Browser.person(port, Screen.DESKTOP, "Hidden-5523")) {
            person.signIn(network, stranger);
            for (var page : new String[] {"edit", "examination"}) {
                person.open("child/" + child.id().value() + "/" + page);
                assertThat(person.page().getByLabel("The child this page is about"))
                        .isHidden();
            }
        }
    }

    private String kept() {
        return network.owner()
                .sql("select string_agg(content::text, '') from draft where staff_id = ?")
                .param(nurse)
                .query(String.class)
                .optional()
                .orElse("");
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen, CANARY).signIn(network, nurse);
    }

    private Child register(SiteId where, UUID by, String family, String given, String number) {
        var data = new ChildData(family, given, LocalDate.of(2019, 7, 14), Sex.FEMALE, number);
        var outcome = network.as(by, () -> patients.register(where, new ChildId(ids.next()), data));
        return ((SaveOutcome.Saved) outcome).child();
    }

    private static void fill(Page page, String family, String given, String born, String number) {
        page.getByLabel("Family name").fill(family);
        page.getByLabel("Given name").fill(given);
        page.getByLabel("Date of birth").fill(born);
        page.getByLabel("Female").check();
        page.getByLabel("Local number").fill(number);
    }
}
