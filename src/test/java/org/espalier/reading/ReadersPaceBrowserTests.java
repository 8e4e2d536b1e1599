package org.espalier.reading;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ReducedMotion;
import java.time.LocalDate;
import java.util.List;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** How fast a film is read by a practised hand, and that a tablet will do. */
@IntegrationTest
class ReadersPaceBrowserTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);
    private static final LocalDate TAKEN = LocalDate.of(2024, 6, 3);
    private static final int MOST_ACTIONS = 44;
    private static final TestLegs LEGS = TestLegs.draw();

    /** Counts what the browser itself sees of pointer and keys. */
    private static final String COUNTING = """
            window.actions = 0;
            for (const kind of ['pointerdown', 'keydown', 'wheel']) {
                addEventListener(kind, () => window.actions++, true);
            }
            """;

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
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        var child = reader.child(surgeon, BIRTH);
        film = reader.arrived(surgeon, child, TAKEN, LEGS.file("B" + child.value(), BIRTH, TAKEN));
    }

    @Test
    void readsAndSignsBothLimbsInAtMostFortyFourActionsWithoutAMenu() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            hand.press("Whole film");
            for (Side side : Side.values()) {
                hand.lookAt(LEGS.centreOfHead(side));
                fiveOfEdge(side).forEach(hand::click);
                page.keyboard().press("n");
                hand.lookAway();
                hand.lookAt(middleOfKnee(side));
                List.of(
                                Landmark.CONDYLE_MEDIAL,
                                Landmark.CONDYLE_LATERAL,
                                Landmark.PLATEAU_MEDIAL,
                                Landmark.PLATEAU_LATERAL)
                        .forEach(landmark -> hand.click(LEGS.place(side, landmark)));
                person.picture("film-room-pace-knee-" + side);
                hand.lookAway();
                hand.lookAt(LEGS.place(side, Landmark.PLAFOND_MEDIAL));
                hand.click(LEGS.place(side, Landmark.PLAFOND_MEDIAL));
                hand.click(LEGS.place(side, Landmark.PLAFOND_LATERAL));
                hand.lookAway();
            }
            hand.awaitSaved();
            hand.assertAnglesOf(LEGS, Side.RIGHT);
            hand.assertAnglesOf(LEGS, Side.LEFT);
            hand.press("Sign this reading");
            button(page.getByRole(AriaRole.DIALOG), "Sign").click();
            page.waitForURL(url -> url.contains("reading="));
            int actions = ((Number) page.evaluate("window.actions")).intValue();
            assertThat(actions).isPositive().isLessThanOrEqualTo(MOST_ACTIONS);
        }
        assertThat(surgeon.does(() -> readings.ofFilm(film))).hasSize(1);
    }

    @Test
    void readsOnATabletByTouch() {
        try (var person = signedIn(Screen.TABLET)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            hand.touchCloser(LEGS.centreOfHead(Side.RIGHT));
            var edge = fiveOfEdge(Side.RIGHT);
            edge.forEach(hand::tap);
            hand.awaitSaved();
            person.picture("film-room-tablet-hip");
            var moved = new PixelPoint(edge.getFirst().x() + 12, edge.getFirst().y());
            hand.dragByTouch(edge.getFirst(), moved, () -> {
                assertThat(page.locator("film-room canvas.loupe")).isVisible();
                person.picture("film-room-tablet-loupe");
            });
            hand.awaitSaved();
            var kept = surgeon.does(() -> drafts.find(film))
                    .orElseThrow()
                    .marks()
                    .edges()
                    .getFirst();
            assertThat(kept.points()).hasSize(5);
            assertThat(kept.points().getFirst().x()).isCloseTo(moved.x(), within(1.5));
            person.assertFits().picture("film-room-tablet");
            SmallMarks.assertAccessibleBesides(page);
        }
    }

    private static List<PixelPoint> fiveOfEdge(Side side) {
        var edge = LEGS.edgeOfHead(side);
        return List.of(edge.get(0), edge.get(2), edge.get(3), edge.get(5), edge.get(6));
    }

    private static PixelPoint middleOfKnee(Side side) {
        var medial = LEGS.place(side, Landmark.PLATEAU_MEDIAL);
        var lateral = LEGS.place(side, Landmark.PLATEAU_LATERAL);
        return new PixelPoint((medial.x() + lateral.x()) / 2, (medial.y() + lateral.y()) / 2);
    }

    private Page open(Person person) {
        person.page().emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        person.page().addInitScript(COUNTING);
        person.open("film/" + film.value());
        new FilmRoomHand(person.page()).awaitFilm();
        return person.page();
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
