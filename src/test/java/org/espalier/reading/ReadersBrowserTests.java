package org.espalier.reading;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.FilmId;
import org.espalier.film.TestDoor.Sender;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The readers of a hospital, a blind second reading, and the questions asked of a plate's screws. */
@IntegrationTest
class ReadersBrowserTests {

    private static final LocalDate BIRTH = LocalDate.of(2018, 5, 20);
    private static final LocalDate TAKEN = LocalDate.of(2024, 6, 3);

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

    Sender surgeon;
    Sender colleague;
    FilmId film;
    ReadingId first;

    @BeforeEach
    void film() {
        surgeon = reader.surgeon();
        colleague = reader.colleague(surgeon);
        film = reader.film(surgeon, reader.child(surgeon, BIRTH), TAKEN);
        first = reader.signed(surgeon, film);
    }

    @Test
    void offersAFilmToBeReadBlindAndShowsNothingOfTheFirstReading() {
        try (var person = signedIn(colleague, Screen.DESKTOP)) {
            person.open("readers").assertAccessible().assertFits().picture("readers");
            var page = person.page();
            page.getByText("Read blind: film of 03‑Jun‑2024").click();
            assertThat(page.getByText("Your second reading, blind to the first"))
                    .isVisible();
            assertThat(page.getByText("Signed readings")).hasCount(0);
            person.settle().picture("film-room-blind");
        }
    }

    @Test
    void showsBothReadingsBesideThePublishedDifference() {
        var draft = colleague.does(() -> drafts.readBlind(first));
        colleague.does(() -> {
            drafts.measure(draft.id(), TestReader.commit(draft.revision(), TestReader.bothLimbs(3)));
            return readings.sign(draft.id(), draft.revision() + 1, null);
        });
        try (var person = signedIn(colleague, Screen.DESKTOP)) {
            person.open("film/" + film.value());
            person.page().getByText("Two readers").click();
            assertThat(person.page().getByText("more than published").first()).isVisible();
            person.settle().assertFits().picture("film-room-two-readers");
        }
        try (var person = signedIn(surgeon, Screen.PHONE)) {
            person.open("readers").assertAccessible().assertFits().picture("readers-phone");
        }
    }

    @Test
    void asksOfEachScrewOfAPlateThatIsSeen() {
        var another = reader.film(surgeon, reader.child(surgeon, BIRTH), TAKEN);
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            person.open("film/" + another.value());
            var page = person.page();
            page.getByText("Further landmarks, plates and screws").click();
            page.getByRole(AriaRole.CHECKBOX, new Page.GetByRoleOptions().setName("Right, distal femur"))
                    .check();
            assertThat(page.getByText("Right, distal femur, metaphyseal screw")).isVisible();
            assertThat(page.getByText("Right, distal femur, epiphyseal screw")).isVisible();
            person.settle().assertFits().picture("film-room-screws");
        }
    }

    private Person signedIn(Sender who, Screen screen) {
        return Browser.person(port, screen).signIn(network, who.staff());
    }
}
