package org.espalier.treatment;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;
import static org.espalier.treatment.TestTreatment.FEMUR;
import static org.espalier.treatment.TestTreatment.TIBIA;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
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
import org.espalier.patient.FactId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class TreatmentBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    PatientService patients;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    Ids ids;

    SiteId site;
    UUID surgeon;
    UUID colleague;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChild() {
        site = new SiteId(network.site());
        surgeon = network.staff(site.value(), "SURGEON");
        colleague = network.staff(site.value(), "SURGEON");
        child = new ChildId(ids.next());
        var data = new ChildData("Straightened", "Stella", LocalDate.of(2017, 2, 9), Sex.FEMALE, "S-1");
        network.as(surgeon, () -> patients.register(site, child, data));
        today = network.as(surgeon, () -> treatments.of(child)).today();
    }

    @OnEachScreen
    void recordsWhatWasPlannedInFewTouchesAndStopsTheWrongSide(Screen screen) {
        plan(FEMUR, PlateSide.LATERAL, Deformity.VARUS);
        try (var person = signedIn(surgeon, screen)) {
            var page = person.page();
            open(person, "record");
            person.picture("treatment-record-" + screen).assertAccessible().assertFits();
            button(page, "Record").click();
            assertThat(page.getByRole(AriaRole.ALERT).first()).containsText("to mend");
            page.getByText("As planned: Plate placed").click();
            person.settle();
            page.getByLabel("Medial", exact()).check();
            page.getByLabel("Implants in or out").fill("plate 16 mm, 2 screws 24 mm");
            page.getByLabel("Pieces").fill("3");
            page.getByLabel("Pieces").press("Tab");
            button(page, "Film, in 12 weeks").click();
            person.settle();
            button(page, "Record").click();
            assertThat(page.getByText("This was planned on the lateral side of the bone"))
                    .isVisible();
            person.settle()
                    .picture("treatment-stopped-" + screen)
                    .assertAccessible()
                    .assertFits();
            assertThat(treatment().procedures()).isEmpty();
            page.getByLabel("Lateral", exact()).check();
            person.settle();
            person.picture("treatment-ready-" + screen);
            button(page, "Record").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
            person.settle();
            assertThat(page.getByText("A plate on the lateral side has held it with its screws since")
                            .first())
                    .isVisible();
            person.picture("treatment-" + screen).assertAccessible().assertFits();
        }
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.TETHERED);
        assertThat(treatment().waiting()).isEmpty();
    }

    @Test
    void letsADeliberateReversalPassByTwo() {
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            var page = person.page();
            open(person, "");
            button(page, "Plan: Right distal femur").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            person.choose(dialog.getByLabel("Procedure", within()), "Plate placed");
            dialog.getByLabel("Medial", within()).check();
            person.choose(dialog.getByLabel("What it corrects", within()), "Varus");
            person.settle().picture("treatment-plan").assertAccessible();
            button(dialog, "Keep the plan").click();
            assertThat(dialog.getByText("A tether on this side lets the planned deformity grow"))
                    .isVisible();
            dialog.getByText("It is a deliberate reversal, agreed by two").click();
            dialog.getByLabel("Why it is meant").fill("it rebounded far beyond");
            dialog.getByLabel("The second person’s name to sign in with").fill(network.login(surgeon));
            dialog.getByLabel("The second person’s password").fill(network.password(surgeon));
            button(dialog, "The second person agrees here").click();
            assertThat(dialog.getByText("It takes another person than the one who asked."))
                    .isVisible();
            dialog.getByLabel("The second person’s name to sign in with").fill(network.login(colleague));
            dialog.getByLabel("The second person’s password").fill(network.password(colleague));
            person.settle().picture("treatment-reversal").assertAccessible();
            button(dialog, "The second person agrees here").click();
            assertThat(page.getByText("Planned: Plate placed – Right distal femur, medial side"))
                    .isVisible();
            var reversal = treatment().reversals().getFirst();
            assertThat(reversal.consent().orElseThrow().byPassword()).isTrue();
        }
    }

    @Test
    void letsTheSecondPersonAgreeUnderTheirOwnSignIn() {
        var reversal = ids.next();
        network.as(surgeon, () -> reversals.ask(child, reversal, FEMUR, PlateSide.MEDIAL, "it rebounded"));
        try (var asker = signedIn(surgeon, Screen.DESKTOP)) {
            open(asker, "");
            assertThat(asker.page().getByText("A deliberate reversal waits for a second person"))
                    .isVisible();
            assertThat(button(asker.page(), "I agree")).isHidden();
        }
        try (var second = signedIn(colleague, Screen.PHONE)) {
            open(second, "");
            second.picture("treatment-consent");
            button(second.page(), "I agree").click();
            assertThat(second.page().getByText("A deliberate reversal waits for a second person"))
                    .isHidden();
        }
        assertThat(treatment().reversals().getFirst().consent()).isPresent();
    }

    @Autowired
    ReversalService reversals;

    @Test
    void keepsWhatWasTypedAndTakesBothWaysOut() {
        var plate = new ImplantId(ids.next());
        var other = new ImplantId(ids.next());
        place(FEMUR, plate);
        place(TIBIA, other);
        try (var person = signedIn(surgeon, Screen.PHONE)) {
            var page = person.page();
            open(person, "record");
            button(page, "Metaphyseal screw out – Right distal femur, lateral side")
                    .click();
            person.settle();
            page.getByLabel("Implants in or out").fill("one screw");
            page.getByLabel("Who operated").fill("A. Surgeon");
            page.getByLabel("Who operated").press("Tab");
            person.settle();
            open(person, "record");
            assertThat(page.getByText("Here is what you typed before.")).isVisible();
            assertThat(page.getByLabel("Who operated")).hasValue("A. Surgeon");
            button(page, "Something else in the same session").click();
            person.settle();
            button(page, "Plate out – Right proximal tibia, lateral side").click();
            button(page, "Wound, in 2 weeks").click();
            person.settle().picture("treatment-two-acts").assertAccessible().assertFits();
            button(page, "Record").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
            person.settle().picture("treatment-both-ways-out");
        }
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.PARKED);
        assertThat(treatment().physis(TIBIA).orElseThrow().state()).isEqualTo(PhysisState.RELEASED);
        assertThat(treatment().standing()).hasSize(3);
    }

    @Test
    void correctsAndWithdrawsAndBothStayInSight() {
        place(FEMUR, new ImplantId(ids.next()));
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            var page = person.page();
            open(person, "");
            page.getByText("Correct", new Page.GetByTextOptions().setExact(true))
                    .click();
            person.settle();
            page.getByLabel("Implants in or out").fill("plate 12 mm, 2 screws");
            page.getByLabel("Why", exact()).fill("size typed wrongly");
            button(page, "Record the correction").click();
            page.waitForURL(url -> url.endsWith("/treatment"));
            assertThat(page.getByText("in place of an earlier entry: size typed wrongly"))
                    .isVisible();
            button(page, "Withdraw").click();
            page.getByRole(AriaRole.DIALOG).getByLabel("Why").fill("another child’s");
            button(page.getByRole(AriaRole.DIALOG), "Withdraw").click();
            assertThat(page.getByText("Withdrawn: this should not have been recorded"))
                    .isVisible();
            person.settle().picture("treatment-withdrawn").assertAccessible();
        }
        assertThat(treatment().standing()).isEmpty();
        assertThat(treatment().procedures()).hasSize(3);
    }

    @OnEachScreen
    void showsTheDayInTheatreLargeAndAsksBeforeAndAfter(Screen screen) {
        var day = today.plusDays(2);
        var plan = Plan.decided(today, ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL, Deformity.VARUS)
                .listed(today, day, null);
        network.as(surgeon, () -> facts.record(child, new FactId(ids.next()), plan));
        try (var person = signedIn(surgeon, screen)) {
            var page = person.page();
            person.open("theatre?day=" + day);
            assertThat(page.getByText("RIGHT", new Page.GetByTextOptions().setExact(true)))
                    .isVisible();
            assertThat(page.getByText("LATERAL", new Page.GetByTextOptions().setExact(true)))
                    .isVisible();
            person.picture("theatre-" + screen).assertAccessible().assertFits();
            page.getByText("Checklist", new Page.GetByTextOptions().setExact(true))
                    .click();
            person.settle();
            assertThat(page.getByText("There is no film; at this age there should be one not older than 6 months."))
                    .isVisible();
            page.getByRole(AriaRole.RADIOGROUP, new Page.GetByRoleOptions().setName("Side marked on the child"))
                    .getByLabel("Yes")
                    .check();
            person.settle()
                    .picture("theatre-check-" + screen)
                    .assertAccessible()
                    .assertFits();
            button(page, "Keep the answers: Before").click();
            assertThat(page.getByText("Last answered")).isVisible();
        }
        assertThat(treatment().checks().facts().getFirst().answers())
                .containsExactly(java.util.Map.entry(Question.SIDE_MARKED, "YES"));
    }

    @Test
    void signsATargetAndSeesAPhysisClosedOnlyWithTheImplantSettled() {
        place(FEMUR, new ImplantId(ids.next()));
        try (var person = signedIn(surgeon, Screen.DESKTOP)) {
            var page = person.page();
            open(person, "");
            button(page, "Sign a target: Right distal femur").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            dialog.getByLabel("Degrees").fill("84");
            dialog.getByLabel("Why this target").fill("rebound is expected");
            person.settle().picture("treatment-target").assertAccessible();
            button(dialog, "Sign").click();
            assertThat(page.getByText("Target mLDFA Right 84.0°, signed")).isVisible();
            button(page, "Seen closed: Right distal femur").click();
            dialog.getByLabel("Day of the film").fill("1 Nov 2026");
            dialog.getByLabel("Read by").fill("A. Reader");
            person.settle();
            button(dialog, "Write it down").click();
            assertThat(dialog.getByText("An implant is in. Say that it stays")).isVisible();
            person.settle().picture("treatment-closed").assertAccessible();
        }
        assertThat(treatment().maturities().facts()).isEmpty();
        assertThat(treatment().physis(FEMUR).orElseThrow().targetAngle().degrees())
                .isEqualTo(84);
    }

    private void plan(PhysisKey physis, PlateSide side, Deformity deformity) {
        var plan = Plan.decided(today, ProcedureKind.PLATE_PLACED, physis, side, deformity);
        network.as(surgeon, () -> facts.record(child, new FactId(ids.next()), plan));
    }

    private void place(PhysisKey physis, ImplantId plate) {
        var data = TestTreatment.plate(today.minusDays(100), physis, PlateSide.LATERAL, plate);
        var outcome = network.as(surgeon, () -> treatments.record(child, new ProcedureId(ids.next()), data));
        assertThat(outcome.isRecorded()).isTrue();
    }

    private Treatment treatment() {
        return network.as(surgeon, () -> treatments.of(child));
    }

    private void open(Person person, String part) {
        person.open("child/" + child.value() + "/treatment" + (part.isEmpty() ? "" : "/" + part));
    }

    private Person signedIn(UUID staff, Screen screen) {
        return Browser.person(port, screen).signIn(network, staff);
    }

    private static Page.GetByLabelOptions exact() {
        return new Page.GetByLabelOptions().setExact(true);
    }

    private static Locator.GetByLabelOptions within() {
        return new Locator.GetByLabelOptions().setExact(true);
    }
}
