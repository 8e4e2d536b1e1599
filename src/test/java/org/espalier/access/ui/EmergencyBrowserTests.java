package org.espalier.access.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
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
import org.espalier.access.SiteService;
import org.espalier.followup.SharedCareService;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.reading.TestReader;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class EmergencyBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    SharedCareService shared;

    @Autowired
    SiteService sites;

    @Autowired
    TestReader reader;

    @OnEachScreen
    void surgeonOpensAChildElsewhereAndItsOfficerReviewsThat(Screen screen) {
        var sender = reader.surgeon();
        var child = reader.child(sender, LocalDate.of(2018, 3, 4));
        var data = data(sender.staff(), child);
        var hospital =
                network.as(sender.staff(), () -> sites.get(sender.site())).name();
        var surgeon = network.staff(network.site(), "SURGEON");
        try (var person = signedIn(surgeon, screen)) {
            var page = person.open("emergency").page();
            button(page, "Open the record for 24 hours").click();
            assertThat(page.getByText("Write why it cannot wait")).isVisible();
            person.settle()
                    .picture("emergency-errors-" + screen)
                    .assertAccessible()
                    .assertFits();
            person.choose(page.locator("vaadin-select"), hospital);
            page.getByLabel("Number of the child at that hospital").fill("not-" + data.localNumber());
            page.getByLabel("Born").first().fill("4 Mar 2018");
            page.getByLabel("Why now").fill("pin site bleeding, family on holiday");
            button(page, "Open the record for 24 hours").click();
            assertThat(page.getByText("No child with this number and day of birth"))
                    .isVisible();
            person.settle().picture("emergency-" + screen).assertAccessible().assertFits();
            page.getByLabel("Number of the child at that hospital").fill(String.valueOf(data.localNumber()));
            button(page, "Open the record for 24 hours").click();
            page.waitForURL(url -> url.contains("course/" + child.value()));
            assertThat(page.locator(".identity-banner")).containsText("INVENTED");
            person.open("emergency");
            assertThat(page.getByText("Open the course")).isVisible();
        }
        isTold(network.staff(sender.site().value(), "NURSE"), screen);
        reviews(network.staff(sender.site().value(), "PRIVACY_OFFICER"), screen);
    }

    private void isTold(UUID nurse, Screen screen) {
        try (var person = signedIn(nurse, screen)) {
            person.open("");
            assertThat(person.page().getByText("opened a record in an emergency"))
                    .isVisible();
            person.picture("emergency-today-" + screen).assertAccessible().assertFits();
        }
    }

    private void reviews(UUID officer, Screen screen) {
        try (var person = signedIn(officer, screen)) {
            var page = person.open("").page();
            page.getByText("opened a record in an emergency").click();
            page.waitForURL(url -> url.contains("admin/emergencies"));
            person.settle();
            page.getByLabel("What you found").fill("called the surgeon back, all right");
            person.picture("emergencies-" + screen).assertAccessible().assertFits();
            button(page, "It was justified").click();
            assertThat(page.getByText("Justified, Test person")).isVisible();
        }
    }

    @OnEachScreen
    void nurseOfTheOtherHospitalSharesTheCareAndOpensTheCourse(Screen screen) {
        var sender = reader.surgeon();
        var child = reader.child(sender, LocalDate.of(2018, 3, 4));
        var other = network.site();
        network.as(sender.staff(), () -> shared.ask(child, new SiteId(other), "physiotherapy there"));
        try (var person = signedIn(sender.staff(), screen)) {
            person.open("child/" + child.value() + "/visits");
            assertThat(person.page().getByText("has not answered: physiotherapy there"))
                    .isVisible();
            person.page().getByText("has not answered").scrollIntoViewIfNeeded();
            person.picture("shared-care-" + screen).assertAccessible().assertFits();
        }
        try (var person = signedIn(network.staff(other, "NURSE"), screen)) {
            var page = person.open("recall").page();
            button(page, "Share the care").click();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Invented, Child"))
                    .click();
            page.waitForURL(url -> url.contains("course/" + child.value()));
            assertThat(page.locator(".identity-banner")).containsText("INVENTED");
        }
    }

    private ChildData data(UUID who, ChildId child) {
        return network.as(who, () -> patients.open(child, "course"))
                .flatMap(Child::data)
                .orElseThrow();
    }

    private Person signedIn(UUID who, Screen screen) {
        return Browser.person(port, screen).signIn(network, who);
    }
}
