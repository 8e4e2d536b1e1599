package org.espalier.course;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

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
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.DraftService;
import org.espalier.reading.ReadingService;
import org.espalier.reading.SmallMarks;
import org.espalier.reading.TestReader;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class CourseBrowserTests {

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

    @Autowired
    TreatmentService treatments;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;

    @BeforeEach
    void child() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, LocalDate.of(2016, 5, 20));
    }

    @OnEachScreen
    void saysWhatToDoWhenNothingWasReadYet(Screen screen) {
        try (var person = signedIn(screen)) {
            person.open("course/" + child.value());
            assertThat(person.page().getByText("No film of this child yet.")).isVisible();
            person.assertAccessible().assertFits().picture("course-empty-" + screen);
        }
    }

    @OnEachScreen
    void showsEveryLimbOverTimeAndTheSameAsAList(Screen screen) {
        var first = reader.film(surgeon, child, LocalDate.of(2023, 6, 1));
        var signed = reader.signed(surgeon, first);
        var again = surgeon.does(() -> drafts.correct(signed));
        surgeon.does(() -> readings.sign(again.id(), 1, "Hip centre was off"));
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2024, 2, 1)), 6);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2024, 9, 1)), 7);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2025, 5, 1)), 13);
        reader.film(surgeon, child, LocalDate.of(2025, 9, 1));
        platedAndParked();
        try (var person = signedIn(screen)) {
            var page = person.open("course/" + child.value()).page();
            assertThat(page.locator("course-chart")).isVisible();
            assertThat(page.locator("course-chart [aria-label='Right tibia, held'] .plate-parked"))
                    .hasCount(1);
            assertThat(page.getByText("15‑Mar‑2024: Plate placed – Right proximal tibia, lateral side"))
                    .isVisible();
            assertThat(page.locator(".course-film")).hasCount(5);
            assertThat(page.getByText("Superseded: Hip centre was off")).isVisible();
            assertThat(page.getByText("No measurable change since 01‑Feb‑2024").first())
                    .isVisible();
            assertThat(page.getByText("Films taken so far: 5")).isVisible();
            person.settle().assertFits().picture("course-" + screen);
            SmallMarks.assertAccessibleBesides(page);
            page.locator(".course-list").scrollIntoViewIfNeeded();
            page.getByText("Where the normal ranges come from").click();
            person.settle().picture("course-list-" + screen);
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Not read yet"))
                    .click();
            page.locator("film-room[data-tiles=settled]").waitFor();
        }
    }

    @Test
    void hidesAndShowsLimbsPartsAndSingleMeasures() {
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2024, 2, 1)));
        try (var person = signedIn(Screen.PHONE)) {
            var page = person.open("course/" + child.value()).page();
            var lanes = page.locator("course-chart .lane");
            assertThat(lanes).hasCount(4);
            press(page, "Left");
            assertThat(page.locator("course-chart .track.left")).hasCount(0);
            press(page, "femur");
            assertThat(lanes).hasCount(3);
            page.getByText("Choose single measures").click();
            press(page, "JLCA");
            assertThat(lanes).hasCount(4);
            person.assertFits().picture("course-single-PHONE");
        }
    }

    private static void press(Page page, String toggle) {
        button(page, toggle).click();
    }

    /** A plate over a year and a half, its metaphyseal screw out since. */
    private void platedAndParked() {
        var implant = new ImplantId(ids.next());
        var plate = TestTreatment.plate(LocalDate.of(2024, 3, 15), TestTreatment.TIBIA, PlateSide.LATERAL, implant);
        var screw = Act.of(
                ProcedureKind.METAPHYSEAL_SCREW_OUT, TestTreatment.TIBIA, PlateSide.LATERAL, implant, "one screw", 1);
        var out = TestTreatment.of(LocalDate.of(2025, 5, 20), screw);
        surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), plate));
        surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), out));
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
