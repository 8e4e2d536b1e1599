package org.espalier.film;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A radiographer brings films, sees what became of each, and gives one to its child. */
@IntegrationTest
class FilmsBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    Ids ids;

    UUID radiographer;

    @BeforeEach
    void aHospitalWithAChild() {
        var site = new SiteId(network.site());
        radiographer = network.staff(site.value(), "RADIOGRAPHER");
        network.as(
                radiographer,
                () -> patients.register(
                        site,
                        new ChildId(ids.next()),
                        new ChildData("Quillfeather", "Ottoline", LocalDate.of(2017, 2, 3), Sex.FEMALE, "F-5501")));
    }

    @ParameterizedTest
    @EnumSource(Screen.class)
    void bringsFilmsAndGivesOneToItsChild(Screen screen) {
        var film = TestFilm.of(300, 700).of("F-5510", "20170203").bytes();
        try (var person = Browser.person(port, screen)) {
            person.signIn(network.login(radiographer), network.password(radiographer));
            var page = person.page();
            person.open("films");
            assertThat(page.getByRole(
                            AriaRole.HEADING,
                            new Page.GetByRoleOptions().setName("Films").setExact(true)))
                    .isVisible();
            person.settle().picture("films-empty-" + screen).assertAccessible().assertFits();

            bring(page, payload("legs.dcm", film), payload("letter.dcm", "no film".getBytes(StandardCharsets.UTF_8)));
            var outcomes = page.locator(".outcomes li");
            assertThat(outcomes).hasCount(2);
            assertThat(outcomes.filter(new Locator.FilterOptions().setHasText("legs.dcm")))
                    .containsText("waits below");
            person.settle()
                    .picture("films-brought-" + screen)
                    .assertAccessible()
                    .assertFits();

            bring(page, payload("legs.dcm", film));
            assertThat(outcomes.last()).containsText("Already here");

            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Give to a child"))
                    .click();
            var give = page.getByRole(
                    AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Give the film to QUILLFEATHER, Ottoline"));
            assertThat(give).isVisible();
            person.settle().picture("films-assign-" + screen);
            give.click();
            assertThat(page.getByText("QUILLFEATHER")).hasCount(0);
            person.settle().picture("films-given-" + screen).assertAccessible().assertFits();
        }
    }

    private static void bring(Page page, FilePayload... files) {
        page.locator("vaadin-upload input[type=file]").setInputFiles(files);
    }

    private static FilePayload payload(String name, byte[] bytes) {
        return new FilePayload(name, "application/dicom", bytes);
    }
}
