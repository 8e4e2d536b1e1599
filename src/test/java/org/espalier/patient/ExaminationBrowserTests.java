package org.espalier.patient;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.kit.DateText;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Weight;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class ExaminationBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    ExaminationService examinations;

    @Autowired
    Ids ids;

    @Autowired
    Clock clock;

    SiteId site;
    UUID surgeon;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChildOfElevenYears() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
        child = new ChildId(ids.next());
        today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
        var data = new ChildData("Examined", "Emil", today.minusYears(11), Sex.MALE, "E-1");
        network.as(surgeon, () -> patients.register(site, child, data));
    }

    @OnEachScreen
    void examinesBothLegsAtAVisit(Screen screen) {
        try (var person = examining(screen)) {
            var page = person.page();
            var visit = part(page, "Examination at a visit");
            button(visit, "Examine now").click();
            assertThat(visit.getByLabel("Day of the visit")).hasValue(DateText.typed(today));
            person.settle().picture("visit-begun-" + screen).assertAccessible().assertFits();
            visit.getByLabel("Gap between ankles").fill("85");
            person.choose(labelled(row(visit, "Thrust"), "Right"), "into valgus");
            button(row(visit, "Thrust"), "Left the same as right: Thrust").click();
            var torsion = row(visit, "Thigh-foot angle");
            labelled(torsion, "Right").fill("15");
            labelled(torsion, "Right").blur();
            labelled(row(visit, "Knee flexion"), "Left").fill("900");
            button(visit, "Write down").click();
            assertThat(visit.getByRole(AriaRole.ALERT)).containsText("Knee flexion: type whole degrees from 0 to 170");
            assertThat(visit.getByRole(AriaRole.ALERT)).containsText("Say in which direction: Thigh-foot angle");
            person.settle().picture("visit-errors-" + screen).assertAccessible().assertFits();
            labelled(row(visit, "Knee flexion"), "Left").fill("140");
            person.choose(labelled(torsion, "Direction, Right: Thigh-foot angle"), "external");
            torsion.scrollIntoViewIfNeeded();
            person.settle().picture("visit-filled-" + screen);
            button(visit, "Write down").click();
            var table = visit.getByRole(AriaRole.TABLE);
            assertThat(table).containsText("Thrust into valgus; Thigh-foot angle 15° external");
            assertThat(table).containsText("Thrust into valgus; Knee flexion 140°");
            assertThat(table).containsText("Gap between ankles 85 mm");
            page.evaluate("window.scrollTo(0, 0)");
            person.settle().picture("visit-kept-" + screen).assertAccessible().assertFits();
        }
    }

    @Test
    void keepsEveryChangeOfAVisitThroughALostPage() {
        try (var person = examining(Screen.PHONE)) {
            var page = person.page();
            var visit = part(page, "Examination at a visit");
            button(visit, "Examine now").click();
            person.choose(labelled(row(visit, "Patella"), "Left"), "dislocates");
            visit.getByLabel("Height").fill("151");
            visit.getByLabel("Height").blur();
            await().until(() -> kept().contains("DISLOCATES") && kept().contains("151"));
            page.navigate("about:blank");
            person.open(address());
            assertThat(visit.getByText("Here is what you typed before")).isVisible();
            assertThat(visit.getByLabel("Height")).hasValue("151");
            button(visit, "Write down").click();
            assertThat(visit.getByRole(AriaRole.TABLE)).containsText("Patella dislocates");
            assertThat(part(page, "Height and weight").getByRole(AriaRole.TABLE))
                    .containsText("151.0 cm");
        }
    }

    @OnEachScreen
    void asksAHeavyChildForBoneAgeAndSleep(Screen screen) {
        var size = new BodySize(today, Length.ofCentimetres(150), Weight.ofKilograms(80));
        network.as(surgeon, () -> {
            examinations.record(child, new FactId(ids.next()), size);
            return child;
        });
        try (var person = examining(screen)) {
            var page = person.page();
            assertThat(page.getByText("Over the 95th BMI centile at 10 years or more: read a bone age"))
                    .isVisible();
            person.picture("heavy-child-" + screen).assertAccessible().assertFits();
            var visit = part(page, "Examination at a visit");
            button(visit, "Examine now").click();
            assertThat(visit.getByText("Asked because the child is over the 95th BMI centile"))
                    .isVisible();
            person.choose(labelled(visit, "Sleep"), "Snores");
            visit.getByText("Asked because").scrollIntoViewIfNeeded();
            person.settle().picture("visit-sleep-" + screen);
            button(visit, "Write down").click();
            assertThat(visit.getByRole(AriaRole.TABLE)).containsText("Sleep Snores");
            var boneAges = part(page, "Bone age");
            button(boneAges, "Add a bone age").click();
            boneAges.getByLabel("Day of the film").fill(DateText.of(today));
            boneAges.getByLabel("Years").fill("13");
            person.choose(labelled(boneAges, "Read by"), "Elbow, olecranon");
            boneAges.getByLabel("Who read the film").fill("A radiologist");
            button(boneAges, "Write down").click();
            assertThat(boneAges.getByRole(AriaRole.TABLE)).containsText("A radiologist");
            assertThat(page.getByText("Over the 95th BMI centile at 10 years or more"))
                    .isHidden();
        }
    }

    @OnEachScreen
    void writesDownTheWorkUp(Screen screen) {
        try (var person = examining(screen)) {
            var page = person.page();
            var labs = part(page, "Laboratory");
            button(labs, "Add a result").click();
            labs.getByLabel("Day of the sample").fill(DateText.of(today));
            person.choose(labelled(labs, "What was measured"), "Vitamin D (25-hydroxy)");
            labs.getByLabel("Value").fill("38");
            button(labs, "Write down").click();
            assertThat(labs.getByRole(AriaRole.ALERT)).containsText("Choose the unit that is on the report");
            person.choose(labelled(labs, "Unit"), "nmol/L");
            labs.getByLabel("The laboratory’s range").fill("50–125");
            button(labs, "Write down").click();
            assertThat(labs.getByRole(AriaRole.TABLE)).containsText("38 nmol/L");
            var disease = part(page, "Bone disease");
            button(disease, "Add since when").click();
            disease.getByLabel("Since").fill(DateText.of(today.minusMonths(3)));
            person.choose(labelled(disease, "Bone disease"), "controlled");
            button(disease, "Write down").click();
            assertThat(disease.getByRole(AriaRole.TABLE)).containsText("controlled");
            var imaging = part(page, "MRI and CT");
            button(imaging, "Add a report").click();
            imaging.getByLabel("Day of the picture").fill(DateText.of(today));
            person.choose(labelled(imaging, "Kind"), "MRI");
            person.choose(labelled(imaging, "Side"), "Left");
            imaging.getByLabel("Who reported it").fill("A radiologist");
            imaging.getByLabel("Bar, share of the growth plate").fill("18");
            button(imaging, "Write down").click();
            assertThat(imaging.getByText("A share belongs to a bar")).isVisible();
            person.choose(labelled(imaging, "Bar across the growth plate"), "bony");
            button(imaging, "Write down").click();
            assertThat(imaging.getByRole(AriaRole.TABLE)).containsText("bony, 18 % of the growth plate");
            labs.scrollIntoViewIfNeeded();
            person.settle().picture("work-up-" + screen).assertAccessible().assertFits();
        }
    }

    private Person examining(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon).open(address());
    }

    private String address() {
        return "child/" + child.value() + "/examination";
    }

    private String kept() {
        return network.owner()
                .sql("select string_agg(content::text, '') from draft where staff_id = ?")
                .param(surgeon)
                .query(String.class)
                .optional()
                .orElse("");
    }

    private static Locator part(Page page, String title) {
        return page.locator("section.sheet")
                .filter(new Locator.FilterOptions()
                        .setHas(page.getByRole(
                                AriaRole.HEADING,
                                new Page.GetByRoleOptions().setName(title).setExact(true))));
    }

    private static Locator row(Locator within, String name) {
        return within.getByRole(
                AriaRole.GROUP, new Locator.GetByRoleOptions().setName(name).setExact(true));
    }

    private static Locator labelled(Locator within, String label) {
        return within.getByLabel(label, new Locator.GetByLabelOptions().setExact(true))
                .first();
    }
}
