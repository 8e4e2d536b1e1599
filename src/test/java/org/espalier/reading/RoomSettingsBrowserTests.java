package org.espalier.reading;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.ReducedMotion;
import java.time.LocalDate;
import java.util.stream.IntStream;
import org.espalier.Browser;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestDoor;
import org.espalier.science.quantity.PixelPoint;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What a reader chooses beside the landmarks, while landmarks are being placed. */
@IntegrationTest
class RoomSettingsBrowserTests {

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
    FilmService films;

    @Autowired
    DraftService drafts;

    TestDoor.Sender surgeon;
    FilmId film;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        var child = reader.child(surgeon, BIRTH);
        film = reader.arrived(surgeon, child, TAKEN, LEGS.file("S" + child.value(), BIRTH, TAKEN));
    }

    @Test
    void takesTheScaleFromTheBallOnTheFilm() {
        try (var person = Browser.person(port, Screen.DESKTOP).signIn(network, surgeon.staff())) {
            var page = person.page();
            page.emulateMedia(new Page.EmulateMediaOptions().setReducedMotion(ReducedMotion.REDUCE));
            person.open("film/" + film.value());
            var hand = new FilmRoomHand(page);
            hand.awaitFilm();
            page.getByText("Both limbs · From the film itself · not recorded").click();
            page.getByRole(AriaRole.RADIO, new Page.GetByRoleOptions().setName("Right limb"))
                    .check();
            person.choose(
                    page.getByLabel("Scale", new Page.GetByLabelOptions().setExact(true)), "By a ball on the film");
            person.settle().picture("film-room-settings");
            SmallMarks.assertAccessibleBesides(page);
            assertThat(page.getByText("Landmark 1 of 22")).isVisible();
            assertThat(page.getByText("The ball is to give the scale")).isVisible();
            page.getByText("Right limb · By a ball on the film · not recorded").click();
            edgeOfBall(hand);
            hand.awaitSaved();
            page.getByText("Right limb · By a ball on the film · not recorded").click();
            page.getByLabel("True diameter of the ball, mm").fill("25");
            page.getByLabel("True diameter of the ball, mm").press("Tab");
            assertThat(page.getByText("The ball is to give the scale")).isHidden();
            person.settle();
            assertThat(page.locator("film-room [data-key^=' ball']")).hasCount(6);
        }
        var kept = surgeon.does(() -> drafts.find(film)).orElseThrow();
        assertThat(kept.settings().taken().ballMm()).isEqualTo(25.0);
        var scale = surgeon.does(() -> FilmMeasurement.of(
                        kept.marks(),
                        kept.settings(),
                        films.find(film).orElseThrow().calibration()))
                .scale();
        assertThat(scale.calibration().scale().orElseThrow().millimetresPerPixelX())
                .isBetween(
                        LEGS.film().bonePixel().millimetres() * 0.98,
                        LEGS.film().bonePixel().millimetres() * 1.02);
    }

    private static void edgeOfBall(FilmRoomHand hand) {
        var ball = LEGS.film().ball();
        hand.wheelTo(ball.centre());
        IntStream.range(0, 6)
                .mapToDouble(point -> Math.toRadians(60 * point))
                .mapToObj(turn -> new PixelPoint(
                        ball.centre().x() + ball.diameterPixels() / 2 * Math.cos(turn),
                        ball.centre().y() + ball.diameterPixels() / 2 * Math.sin(turn)))
                .forEach(hand::click);
    }
}
