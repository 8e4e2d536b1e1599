package org.espalier.film;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class WorklistBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Ids ids;

    @OnEachScreen
    void carriesAFilmFromTheSurgeonToTheRadiographer(Screen screen) {
        var site = network.site();
        var surgeon = network.staff(site, "SURGEON");
        var radiographer = network.staff(site, "RADIOGRAPHER");
        var child = register(site, surgeon, "Worklisted");
        var none = register(site, surgeon, "Unfilmed");
        asks(surgeon, child, none, screen);
        carriesOut(radiographer, screen);
    }

    private void asks(UUID surgeon, ChildId child, ChildId none, Screen screen) {
        try (var person = Browser.person(port, screen).signIn(network, surgeon)) {
            var page = person.page();
            person.open("child/" + child.value() + "/examination");
            button(page, "Ask for a film, or for none").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            button(dialog, "Write down").click();
            assertThat(dialog.getByText("Choose one.")).isVisible();
            dialog.getByLabel("A film is needed").check();
            person.choose(dialog.getByLabel("Which film"), "Both legs standing, hip to ankle");
            person.choose(dialog.getByLabel("Side"), "both sides");
            person.choose(dialog.getByLabel("Block under the foot"), "left foot");
            dialog.getByLabel("Height of the block").fill("15");
            dialog.getByLabel("A ball of known size").check();
            person.settle().picture("film-order-" + screen).assertAccessible();
            button(dialog, "Write down").click();
            assertThat(page.getByText("block of 15 mm under the left foot; with ball"))
                    .isVisible();
            person.open("child/" + none.value() + "/examination");
            button(page, "Ask for a film, or for none").click();
            dialog.getByLabel("No film needed").check();
            dialog.getByLabel("Why").fill("last film four months ago");
            button(dialog, "Write down").click();
            assertThat(page.getByText("No film needed: last film four months ago"))
                    .isVisible();
        }
    }

    private void carriesOut(UUID radiographer, Screen screen) {
        try (var person = Browser.person(port, screen).signIn(network, radiographer)) {
            var page = person.page();
            person.open("worklist");
            assertThat(page.locator(".worklist-line").first()).containsText("WORKLISTED, Wilma");
            assertThat(page.locator(".worklist-line").last()).containsText("No film needed");
            person.picture("worklist-" + screen).assertAccessible().assertFits();
            button(page, "Exposure rejected").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            assertThat(dialog).containsText("WORKLISTED, Wilma");
            person.choose(dialog.getByLabel("What is wrong with it"), "patella not forward");
            dialog.getByLabel("Dose-area product").fill("11,4");
            button(dialog, "Write down").click();
            assertThat(dialog.getByText("Choose the unit that the machine shows."))
                    .isVisible();
            person.choose(dialog.getByLabel("Unit"), "cGy·cm²");
            person.settle().picture("worklist-reject-" + screen).assertAccessible();
            button(dialog, "Write down").click();
            assertThat(page.getByText("Exposure rejected: patella not forward, dose-area product 11.4 cGy·cm²"))
                    .isVisible();
            button(page, "Taken").click();
            button(page.getByRole(AriaRole.DIALOG), "Write down").click();
            assertThat(page.getByText("Taken, dose not recorded")).isVisible();
            person.settle()
                    .picture("worklist-taken-" + screen)
                    .assertAccessible()
                    .assertFits();
            person.open("worklist/patella");
            assertThat(page.getByRole(AriaRole.HEADING)).hasText("Patella forward, not the feet");
            person.picture("patella-card-" + screen).assertAccessible().assertFits();
        }
    }

    private ChildId register(UUID site, UUID by, String family) {
        var id = new ChildId(ids.next());
        var data = new ChildData(family, "Wilma", LocalDate.of(2019, 7, 14), Sex.FEMALE, null);
        network.as(by, () -> patients.register(new SiteId(site), id, data));
        return id;
    }
}
