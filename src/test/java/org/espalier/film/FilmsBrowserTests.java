package org.espalier.film;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
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

    @Autowired
    FilmService films;

    UUID radiographer;
    ChildId child;

    @BeforeEach
    void aHospitalWithAChild() {
        var site = new SiteId(network.site());
        radiographer = network.staff(site.value(), "RADIOGRAPHER");
        child = new ChildId(ids.next());
        network.as(
                radiographer,
                () -> patients.register(
                        site,
                        child,
                        new ChildData("Quillfeather", "Ottoline", LocalDate.of(2017, 2, 3), Sex.FEMALE, "F-5501")));
    }

    @OnEachScreen
    void bringsFilmsAndGivesOneToItsChild(Screen screen) {
        var film = TestFilm.of(300, 700).of("F-5510", "20170203").bytes();
        try (var person = Browser.person(port, screen)) {
            person.signIn(network, radiographer);
            var page = person.page();
            person.open("films");
            assertThat(page.getByRole(
                            AriaRole.HEADING,
                            new Page.GetByRoleOptions().setName("Films").setExact(true)))
                    .isVisible();
            person.settle().picture("films-empty-" + screen).assertAccessible().assertFits();

            bring(page, payload("legs.dcm", film), payload("letter.dcm", "no film".getBytes(StandardCharsets.UTF_8)));
            var outcomes = page.locator(".upload-results li");
            assertThat(outcomes).hasCount(2);
            assertThat(outcomes.filter(new Locator.FilterOptions().setHasText("legs.dcm")))
                    .containsText("waits below");
            assertThat(outcomes.filter(new Locator.FilterOptions().setHasText("letter.dcm")))
                    .containsText("This is neither a DICOM film nor a JPEG or PNG photo. Choose another file.");
            person.settle()
                    .picture("films-brought-" + screen)
                    .assertAccessible()
                    .assertFits();

            bring(page, payload("legs.dcm", film));
            assertThat(outcomes.last()).containsText("Already here");

            givesItToItsChild(person, screen);
        }
    }

    private void givesItToItsChild(Person person, Screen screen) {
        var page = person.page();
        page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Give to a child"))
                .click();
        var give = page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Give the film to QUILLFEATHER, Ottoline"));
        assertThat(give).isVisible();
        person.settle().picture("films-assign-" + screen).assertAccessible();
        give.click();
        assertThat(page.getByText("Number or birth date differ: the film says")).isVisible();
        person.settle().picture("films-doubted-" + screen).assertAccessible();
        give.click();
        assertThat(page.getByText("QUILLFEATHER")).hasCount(0);
        person.settle().picture("films-given-" + screen).assertAccessible().assertFits();

        var given = network.as(radiographer, () -> films.of(child));
        assertThat(given).hasSize(1);
        person.open("film/" + given.getFirst().id().value());
        page.locator("film-room[data-tiles=settled]").waitFor();
        assertThat(page.locator(".identity-banner")).containsText("QUILLFEATHER");
    }

    /** The line is throttled, so that the upload lasts long enough to be seen. */
    @Test
    void showsHowFarAnUploadHasCome() {
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            person.signIn(network, radiographer);
            var page = person.open("films").page();
            throttle(page, 400_000);
            bring(page, payload("legs.dcm", TestFilm.of(700, 1000).bytes()));
            var file = page.locator("vaadin-upload-file");
            assertThat(file).containsText("legs.dcm");
            assertThat(file.locator("vaadin-progress-bar")).isVisible();
            page.waitForFunction("""
                    () => {
                      const bar = document.querySelector('vaadin-upload-file')?.shadowRoot
                        ?.querySelector('vaadin-progress-bar') ?? document.querySelector('vaadin-progress-bar');
                      return bar && bar.value > 0 && bar.value < 1;
                    }""");
            person.picture("films-progress");
            throttle(page, -1);
            assertThat(page.locator(".upload-results li")).containsText("waits below");
        }
    }

    private static void throttle(Page page, int bytesASecond) {
        var conditions = new JsonObject();
        conditions.addProperty("offline", false);
        conditions.addProperty("latency", 0);
        conditions.addProperty("downloadThroughput", -1);
        conditions.addProperty("uploadThroughput", bytesASecond);
        page.context().newCDPSession(page).send("Network.emulateNetworkConditions", conditions);
    }

    private static void bring(Page page, FilePayload... files) {
        page.locator("vaadin-upload input[type=file]").setInputFiles(files);
    }

    private static FilePayload payload(String name, byte[] bytes) {
        return new FilePayload(name, "application/dicom", bytes);
    }
}
