package org.espalier.prognosis;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.DateText;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class PrognosisBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestReader reader;

    @Autowired
    TestCourse courses;

    @Autowired
    TestNetwork network;

    Sender surgeon;

    @BeforeEach
    void surgeon() {
        surgeon = reader.surgeon();
    }

    @OnEachScreen
    void showsWhereBothLimbsAreGoing(Screen screen) {
        var child = courses.underWay(surgeon);
        courses.plate(surgeon, child, LocalDate.of(2026, 8, 10), TestCourse.RIGHT_FEMUR);
        try (var person = signedIn(screen)) {
            var page = person.open("child/" + child.value() + "/prognosis").page();
            assertThat(page.getByText("Right proximal tibia \u2013 tethered")).isVisible();
            assertThat(page.getByText("chance that it never comes").first()).isVisible();
            assertThat(page.getByText("If the femur’s plate came out today")).isVisible();
            assertThat(page.getByText("Decision support for licensed clinicians")
                            .first())
                    .isVisible();
            page.getByLabel("Angles on another day").fill("1 March 2028");
            page.getByLabel("Angles on another day").press("Tab");
            assertThat(page.getByRole(AriaRole.ROWHEADER, rowHeader(DateText.of(LocalDate.of(2028, 3, 1))))
                            .first())
                    .isVisible();
            person.assertAccessible().assertFits().picture("prognosis-" + screen);
        }
    }

    @OnEachScreen
    void showsHowAYoungBowGoesByItselfAndWhatComesBack(Screen screen) {
        var child = courses.youngBow(surgeon);
        var released = courses.underWay(surgeon);
        courses.metaphysealScrewOut(surgeon, released, LocalDate.of(2026, 8, 10), TestCourse.RIGHT_TIBIA);
        courses.plateOut(surgeon, released, LocalDate.of(2026, 8, 10), TestCourse.LEFT_TIBIA);
        try (var person = signedIn(screen)) {
            var page = person.open("child/" + child.value() + "/prognosis").page();
            assertThat(page.getByText("behind the course of its age").first()).isVisible();
            person.assertAccessible().assertFits().picture("prognosis-young-" + screen);
            page = person.open("child/" + released.value() + "/prognosis").page();
            assertThat(page.getByText("Chance that the plate left in goes on correcting"))
                    .isVisible();
            assertThat(page.getByText("returns").first()).isVisible();
            person.assertAccessible().assertFits().picture("prognosis-released-" + screen);
        }
    }

    private static Page.GetByRoleOptions rowHeader(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    @OnEachScreen
    void switchesToThePublishedRatesForAReason(Screen screen) {
        try (var person = signedIn(screen)) {
            var page = person.open("rates").page();
            page.getByRole(AriaRole.BUTTON, button("Use the published rates")).click();
            assertThat(page.getByText("Say why in a few words; it stays on record."))
                    .isVisible();
            page.getByLabel("Why").fill("to compare with the series");
            page.getByRole(AriaRole.BUTTON, button("Use the published rates")).click();
            assertThat(page.getByText("Forecasts use the published rates, as was chosen."))
                    .isVisible();
            person.assertAccessible().assertFits().picture("rates-" + screen);
        }
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
