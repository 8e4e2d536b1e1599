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
import org.espalier.patient.ChildId;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The film room by a real mouse and real keys, on a drawn film whose angles are known. */
@IntegrationTest
class FilmRoomBrowserTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);
    private static final LocalDate TAKEN = LocalDate.of(2024, 6, 3);
    private static final TestLegs LEGS = TestLegs.draw();

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
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BIRTH);
        film = reader.arrived(surgeon, child, TAKEN, LEGS.file("B" + child.value(), BIRTH, TAKEN));
    }

    @Test
    void readsAFilmWithTheMouseAndSignsIt() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            person.picture("film-room-empty");
            List.of(Side.values()).forEach(side -> places(side, hand, person));
            hand.press("Whole film");
            hand.assertAnglesOf(LEGS, Side.RIGHT);
            hand.assertAnglesOf(LEGS, Side.LEFT);
            person.settle().assertFits().picture("film-room-read");
            SmallMarks.assertAccessibleBesides(page);
            hand.press("Sign this reading");
            var dialog = page.getByRole(AriaRole.DIALOG);
            assertThat(dialog).containsText("78.0° varus");
            person.settle().picture("film-room-sign");
            SmallMarks.assertAccessibleBesides(page);
            button(dialog, "Sign").click();
            page.waitForURL(url -> url.contains("reading="));
            assertThat(page.getByText("Signed reading", new Page.GetByTextOptions().setExact(true)))
                    .isVisible();
            person.settle().picture("film-room-signed");
            SmallMarks.assertAccessibleBesides(page);
            var signed = surgeon.does(() -> readings.ofFilm(film));
            assertThat(signed).singleElement().satisfies(reading -> assertThat(reading.numbers())
                    .hasSizeGreaterThan(20));
            person.open("course/" + child.value())
                    .assertAccessible()
                    .assertFits()
                    .picture("course-one-film");
        }
    }

    private static void places(Side side, FilmRoomHand hand, Person person) {
        hand.wheelTo(LEGS.centreOfHead(side));
        LEGS.edgeOfHead(side).forEach(hand::click);
        hand.awaitSaved();
        person.picture("film-room-hip-" + side);
        hand.press("Next");
        hand.wheelTo(LEGS.place(side, Landmark.PLATEAU_MEDIAL));
        List.of(Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL)
                .forEach(landmark -> hand.click(LEGS.place(side, landmark)));
        person.picture("film-room-knee-" + side);
        hand.wheelTo(LEGS.place(side, Landmark.PLAFOND_MEDIAL));
        hand.click(LEGS.place(side, Landmark.PLAFOND_MEDIAL));
        hand.click(LEGS.place(side, Landmark.PLAFOND_LATERAL));
        hand.awaitSaved();
    }

    @ParameterizedTest
    @EnumSource(Side.class)
    void readsALimbByKeysAlone(Side side) {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            hand.keyToLimb(side);
            LEGS.edgeOfHead(side).forEach(hand::keyTo);
            hand.awaitSaved();
            page.keyboard().press("n");
            for (Landmark landmark : List.of(
                    Landmark.CONDYLE_MEDIAL,
                    Landmark.CONDYLE_LATERAL,
                    Landmark.PLATEAU_MEDIAL,
                    Landmark.PLATEAU_LATERAL,
                    Landmark.PLAFOND_MEDIAL,
                    Landmark.PLAFOND_LATERAL)) {
                hand.keyTo(LEGS.place(side, landmark));
            }
            hand.awaitSaved();
            hand.assertAnglesOf(LEGS, side);
        }
    }

    @Test
    void keepsTheDraftWhenThePageIsLoadedAgain() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            hand.wheelTo(LEGS.centreOfHead(Side.RIGHT));
            LEGS.edgeOfHead(Side.RIGHT).forEach(hand::click);
            hand.awaitSaved();
            page.reload();
            hand.awaitFilm();
            assertThat(page.locator("film-room [data-key^='RIGHT hip_centre']")).hasCount(8);
            assertThat(surgeon.does(() -> drafts.find(film))
                            .orElseThrow()
                            .marks()
                            .edges())
                    .singleElement()
                    .satisfies(edge -> assertThat(edge.points()).hasSize(8));
            assertThat(page.getByText("Right · Femoral condyle, medial").first())
                    .isVisible();
        }
    }

    @Test
    void movesALandmarkByDraggingAndTakesItBack() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = open(person);
            var hand = new FilmRoomHand(page);
            hand.wheelTo(LEGS.centreOfHead(Side.RIGHT));
            var edge = LEGS.edgeOfHead(Side.RIGHT);
            edge.forEach(hand::click);
            hand.awaitSaved();
            var moved = new PixelPoint(edge.getFirst().x() + 12, edge.getFirst().y());
            hand.drag(edge.getFirst(), moved);
            hand.awaitSaved();
            assertThat(firstEdgePoint().x()).isCloseTo(moved.x(), within(1.0));
            hand.press("Undo");
            hand.awaitSaved();
            assertThat(firstEdgePoint().x()).isCloseTo(edge.getFirst().x(), within(1.0));
        }
    }

    @Test
    void fitsAPhone() {
        try (var person = signedIn(Screen.PHONE)) {
            open(person);
            person.assertFits().assertAccessible().picture("film-room-phone");
            person.open("course/" + child.value())
                    .assertFits()
                    .assertAccessible()
                    .picture("course-empty-phone");
        }
    }

    private EdgePoints.EdgePoint firstEdgePoint() {
        return surgeon.does(() -> drafts.find(film))
                .orElseThrow()
                .marks()
                .edges()
                .getFirst()
                .points()
                .getFirst();
    }

    private Page open(Person person) {
        person.page().emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
        person.open("film/" + film.value());
        new FilmRoomHand(person.page()).awaitFilm();
        return person.page();
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
