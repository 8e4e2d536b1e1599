package org.espalier.plan;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.SelectOption;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.patient.ClinicalExamination;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.LegAngle;
import org.espalier.patient.LegAnswer;
import org.espalier.patient.LegExamination;
import org.espalier.patient.LegSign;
import org.espalier.prognosis.TestCourse;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class SheetBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    ExaminationService examinations;

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

    private ChildId filmed() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.wholeFilm(surgeon, child, LocalDate.of(2026, 8, 3)));
        return child;
    }

    /** The axis as drawn after the cut agrees with the number beside it; both within a tenth of a degree. */
    @Test
    void cutsTheFilmByMouseAndDrawsTheAxisAgain() {
        var child = filmed();
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.open("child/" + child.value() + "/plan/osteotomy?limb=right")
                    .page();
            settled(page);
            var before = hka(row(page, 1));
            assertThat(before).isCloseTo(22, within(0.1));
            page.getByLabel("Turn of the lower part").fill("12");
            page.getByLabel("Turn of the lower part").press("Enter");
            page.getByLabel("Turn of the lower part").press("Tab");
            settled(page);
            drag(page, handle(page, "Hinge"), 25, 6);
            drag(page, handle(page, "Other end of the cut"), 4, 12);
            settled(page);
            assertThat(hka(row(page, 2))).isCloseTo(drawn(page, "after"), within(0.1));
            assertThat(hka(row(page, 1))).isCloseTo(drawn(page, "before"), within(0.1));
            assertThat(hka(row(page, 2))).isLessThan(before - 8);
            assertThat(page.getByText("what lies below turned 12.0\u00b0 outwards"))
                    .isVisible();
            person.at("cut=").assertAccessible().assertFits().picture("plan-cut");
        }
    }

    @Test
    void cutsTheFilmByKeysAlone() {
        var child = filmed();
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.open("child/" + child.value() + "/plan/osteotomy?limb=left")
                    .page();
            settled(page);
            page.getByLabel("Turn of the lower part").fill("10");
            page.getByLabel("Turn of the lower part").press("Enter");
            page.getByLabel("Turn of the lower part").press("Tab");
            settled(page);
            var middle = row(page, 2);
            var hinge = handle(page, "Hinge");
            hinge.focus();
            for (int i = 0; i < 5; i++) {
                page.keyboard().press("Shift+ArrowDown");
            }
            page.keyboard().press("ArrowLeft");
            settled(page);
            assertThat(row(page, 2)).isNotEqualTo(middle);
            assertThat(hka(row(page, 2))).isCloseTo(drawn(page, "after"), within(0.1));
            var kind = page.locator("cut-film select");
            kind.focus();
            for (int i = 0; i < 3; i++) {
                page.keyboard().press("ArrowDown");
            }
            settled(page);
            assertThat(kind.locator("option:checked")).hasText("femur, round (dome)");
            assertThat(page.locator("cut-film polyline[data-kind='cut']")).hasCount(1);
            assertThat(page.locator("cut-film").getByText("no wedge and no change of length"))
                    .isVisible();
            assertThat(hka(row(page, 2))).isCloseTo(drawn(page, "after"), within(0.1));
            var box = page.locator("cut-film .film").boundingBox();
            assertThat(box.y + box.height).as("above the fold").isLessThan(768);
            person.settle();
            person.assertAccessible().assertFits().picture("plan-cut-left");
        }
    }

    /** The centre of the round cut is drawn onto the cut itself: said in words, and what was drawn last stays. */
    @Test
    void saysWhyARoundCutCannotRunSo() {
        var child = filmed();
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.open("child/" + child.value() + "/plan/osteotomy?limb=left")
                    .page();
            settled(page);
            page.locator("cut-film select").selectOption(new SelectOption().setLabel("tibia, round (dome)"));
            settled(page);
            var hinge = handle(page, "Hinge").boundingBox();
            var end = handle(page, "Other end of the cut").boundingBox();
            drag(page, handle(page, "Hinge"), 0, end.y - hinge.y);
            assertThat(page.getByText("The centre of a round cut lies away from it"))
                    .isVisible();
            drag(page, handle(page, "Hinge"), 0, hinge.y - end.y);
            settled(page);
            assertThat(page.getByText("The centre of a round cut lies away from it"))
                    .isHidden();
        }
    }

    @Test
    void asksWhichFragmentWasTrueBeforeItShowsAnObliqueCut() {
        var child = filmed();
        reader.signedFromTheSide(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 4)), Side.LEFT, 8);
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.open("child/" + child.value() + "/plan/osteotomy?limb=left")
                    .page();
            use(page, "The tibia 15.0\u00b0 varus").click();
            assertThat(page.getByLabel("Varus in degrees")).hasValue("15");
            use(page, "bend of the shaft").press("Enter");
            assertThat(page.getByLabel("Procurvatum in degrees")).hasValue("8");
            assertThat(page.getByText("the two films are not of one day")).isVisible();
            person.settle();
            person.assertAccessible().assertFits().picture("plan-two-films");
            page.getByLabel("Varus in degrees").fill("20");
            page.getByLabel("Procurvatum in degrees").fill("0");
            page.getByLabel("Internal torsion in degrees").fill("25");
            page.getByLabel("Diameter of the bone there").fill("25");
            reckon(person);
            assertThat(page.getByText("An oblique cut is shown once it is said"))
                    .isVisible();
            person.choose(page.getByLabel("Which fragment was true on the film?"), "the upper one");
            reckon(person);
            assertThat(page.getByText("50.8\u00b0 to the shaft")).isVisible();
            var drawing = page.getByAltText("From the front 10.0\u00b0, falls towards lateral");
            assertThat(drawing).isVisible();
            drawing.scrollIntoViewIfNeeded();
            person.assertAccessible().assertFits().picture("plan-oblique-left");
            page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Guided growth sheet"))
                    .click();
            page.getByLabel("Screw: core diameter in mm").fill("3.1");
            person.choose(page.getByLabel("Screw: material"), "steel");
            page.getByLabel("Exposed length in mm").fill("3");
            page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Reckon"))
                    .click();
            assertThat(page.getByText("no chance of breakage")).isVisible();
        }
    }

    @OnEachScreen
    void showsTheSheets(Screen screen) {
        var child = filmed();
        var young = courses.youngBow(surgeon);
        examined(child);
        try (var person = signedIn(screen)) {
            var page = person.open("child/" + child.value() + "/plan/growth?core=3.1&material=STEEL&exposed=3")
                    .page();
            assertThat(page.getByText("no chance of breakage")).isVisible();
            person.assertAccessible().assertFits().picture("plan-growth-" + screen);
            page = person.open("child/" + young.value() + "/plan/bow?limb=left").page();
            page.getByLabel("Study and method for the course of the age").press("Enter");
            page.getByRole(AriaRole.OPTION)
                    .filter(new Locator.FilterOptions().setHasText("Salenius"))
                    .first()
                    .click();
            reckon(person);
            assertThat(page.getByAltText("By Salenius and Vankka")).isVisible();
            assertThat(page.getByText("What the studies leave open")).isVisible();
            person.assertAccessible().assertFits().picture("plan-bow-" + screen);
            page = person.open("child/" + child.value() + "/plan/length").page();
            assertThat(page.getByText("Difference of leg length")).isVisible();
            person.assertAccessible().assertFits().picture("plan-length-" + screen);
            person.open("child/" + child.value() + "/plan/osteotomy?varus=20&procurvatum=10&torsion=25&width=40");
            settled(page);
            person.assertAccessible().assertFits().picture("plan-osteotomy-" + screen);
        }
    }

    private void examined(ChildId child) {
        for (var on : List.of(LocalDate.of(2026, 2, 2), LocalDate.of(2026, 8, 3))) {
            var leg = new LegExamination(
                    Map.of(LegAngle.THIGH_FOOT, new Angle(on.getMonthValue() - 20.0)),
                    Map.of(LegSign.THRUST, LegAnswer.Thrust.VARUS, LegSign.LATERAL_LAXITY, LegAnswer.Laxity.ONE));
            surgeon.does(() -> {
                examinations.record(
                        child,
                        new FactId(UUID.randomUUID()),
                        new ClinicalExamination(on, null, null, leg, leg, null, null, null));
                return child;
            });
        }
    }

    private static void reckon(Person person) {
        person.page()
                .getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Reckon"))
                .press("Enter");
        person.settle();
    }

    private static void settled(Page page) {
        page.waitForFunction("() => { const cut = document.querySelector('cut-film');"
                + " return cut?.dataset.answered && cut.dataset.answered === cut.dataset.sent; }");
    }

    private static Locator use(Page page, String words) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("Use: .*" + words)));
    }

    private static Locator handle(Page page, String name) {
        return page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
    }

    private static void drag(Page page, Locator handle, double across, double down) {
        handle.scrollIntoViewIfNeeded();
        var box = handle.boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + across / 2, y + down / 2);
        page.mouse().move(x + across, y + down);
        page.mouse().up();
    }

    /** The cell of the row of HKA: 1 before, 2 after. */
    private static String row(Page page, int cell) {
        return page.locator("cut-film tr")
                .filter(new Locator.FilterOptions().setHasText(Pattern.compile("^\\s*HKA\\b")))
                .locator("td")
                .nth(cell - 1)
                .innerText();
    }

    private static double hka(String words) {
        var number = Double.parseDouble(words.replaceAll("[^0-9.].*", ""));
        return words.contains("valgus") ? -number : number;
    }

    /** HKA by the lines as they stand on the screen, + varus: a right limb has lateral on the left. */
    private static double drawn(Page page, String kind) {
        var lines = page.locator("cut-film polyline[data-kind='" + kind + "']");
        double femur = slope(lines.nth(0).getAttribute("points"));
        double tibia = slope(lines.nth(1).getAttribute("points"));
        boolean left = page.url().contains("limb=left");
        return left ? femur - tibia : tibia - femur;
    }

    private static double slope(String points) {
        var at = Arrays.stream(points.trim().split("[ ,]+"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        return Math.toDegrees(Math.atan2(at[2] - at[0], at[3] - at[1]));
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
