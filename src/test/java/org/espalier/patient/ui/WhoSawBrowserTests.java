package org.espalier.patient.ui;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import java.time.LocalDate;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.patient.PatientService;
import org.espalier.reading.TestReader;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class WhoSawBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    TestReader reader;

    @OnEachScreen
    void nurseReadsWhoOpenedTheRecordAndTheOfficerReadsItWithoutTheName(Screen screen) {
        var sender = reader.surgeon();
        var site = sender.site().value();
        var child = reader.child(sender, LocalDate.of(2018, 3, 4));
        var record =
                network.as(sender.staff(), () -> patients.open(child, "course").orElseThrow());
        var name = record.data().orElseThrow().familyName();
        var nurse = network.staff(site, "NURSE");
        try (var person = Browser.person(port, screen).signIn(network, nurse)) {
            person.open("child/" + child.value() + "/seen");
            assertThat(person.page().getByText("Opened: course").first()).isVisible();
            assertThat(person.page().locator(".identity-banner")).containsText(name.toUpperCase(java.util.Locale.ROOT));
            person.picture("who-saw-" + screen).assertAccessible().assertFits();
        }
        var officer = network.staff(site, "PRIVACY_OFFICER");
        try (var person = Browser.person(port, screen).signIn(network, officer)) {
            person.open("child/" + child.value() + "/seen");
            assertThat(person.page().getByText("Opened: course").first()).isVisible();
            assertThat(person.page().locator("#content")).not().containsText(name.toUpperCase(java.util.Locale.ROOT));
        }
    }
}
