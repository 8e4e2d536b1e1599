package org.espalier.reading;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor;
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Two drawn films side by side, reached from the course as a surgeon would. */
@IntegrationTest
class ComparisonBrowserTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);
    private static final TestLegs LEGS = TestLegs.draw();

    /** Screen pixels to a millimetre of each film. */
    private static final String SCALES = "pair => pair.panes.map(pane => pane.scale)";

    /** Where the chosen landmark stands on each film, against the middle of the film's pane. */
    private static final String FROM_MIDDLE = """
            pair => [...pair.shadowRoot.querySelectorAll('.mark.chosen')].flatMap(mark => {
              const box = mark.getBoundingClientRect();
              const pane = mark.closest('.pane').getBoundingClientRect();
              return [box.left + box.width / 2 - pane.left - pane.width / 2,
                      box.top + box.height / 2 - pane.top - pane.height / 2];
            })""";

    @LocalServerPort
    int port;

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    DraftService drafts;

    @Autowired
    ReadingService readings;

    TestDoor.Sender surgeon;
    ChildId child;

    @BeforeEach
    void twoFilms() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BIRTH);
        read(LocalDate.of(2024, 6, 3));
        read(LocalDate.of(2024, 12, 9));
    }

    @OnEachScreen
    void showsBothFilmsAtOneScaleAndALandmarkOnBoth(Screen screen) {
        try (var person = signedIn(screen)) {
            var page = person.open("course/" + child.value()).page();
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Beside the film of 03‑Jun‑2024"))
                    .click();
            var pair = page.locator("film-pair[data-tiles=settled]");
            pair.waitFor();
            assertThat(page.evaluate("window.scrollY")).isEqualTo(0);
            person.settle().assertFits().picture("compare-" + screen);
            assertSameScale(pair);
            button(pair, "Right · Femoral condyle, medial").click();
            assertThat(numbers(pair.evaluate(FROM_MIDDLE))).hasSize(4).allSatisfy(off -> assertThat(off)
                    .isCloseTo(0, within(2.0)));
            for (int i = 0; i < 4; i++) {
                button(pair, "Closer").click();
            }
            pair.waitFor();
            assertSameScale(pair);
            person.settle().assertAccessible().picture("compare-close-" + screen);
            assertThat(page.getByText("No measurable change: 0.0").first()).isVisible();
            page.locator(".comparison").scrollIntoViewIfNeeded();
            person.picture("compare-numbers-" + screen);
        }
    }

    private static void assertSameScale(Locator pair) {
        var scales = numbers(pair.evaluate(SCALES));
        assertThat(scales).hasSize(2);
        assertThat(scales.getFirst()).isPositive().isCloseTo(scales.getLast(), within(0.001));
    }

    private static Locator button(Locator pair, String name) {
        return pair.getByRole(AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(name));
    }

    private static List<Double> numbers(Object evaluated) {
        return ((List<?>) evaluated)
                .stream().map(number -> ((Number) number).doubleValue()).toList();
    }

    private void read(LocalDate takenOn) {
        var bytes = LEGS.file("C" + child.value() + takenOn, BIRTH, takenOn);
        FilmId film = reader.arrived(surgeon, child, takenOn, bytes);
        surgeon.does(() -> {
            var draft = drafts.begin(film);
            drafts.measure(draft.id(), TestReader.commit(draft.revision(), marks()));
            return readings.sign(draft.id(), draft.revision() + 1, null);
        });
    }

    private static Marks marks() {
        var points = List.of(Side.values()).stream()
                .flatMap(side -> List.of(
                                Landmark.CONDYLE_MEDIAL,
                                Landmark.CONDYLE_LATERAL,
                                Landmark.PLATEAU_MEDIAL,
                                Landmark.PLATEAU_LATERAL,
                                Landmark.PLAFOND_MEDIAL,
                                Landmark.PLAFOND_LATERAL)
                        .stream()
                        .map(landmark -> placed(side, landmark)))
                .toList();
        var edges = List.of(Side.values()).stream()
                .map(side -> new EdgePoints(
                        side,
                        "hip_centre",
                        LEGS.edgeOfHead(side).stream()
                                .map(at -> new EdgePoints.EdgePoint(at.x(), at.y()))
                                .toList()))
                .toList();
        return new Marks(points, edges);
    }

    private static PlacedPoint placed(Side side, Landmark landmark) {
        var at = LEGS.place(side, landmark);
        return new PlacedPoint(side, landmark.code(), at.x(), at.y());
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
