package org.espalier.followup;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.UUID;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.awaitility.Awaitility;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.film.TestDoor;
import org.espalier.kit.DateText;
import org.espalier.patient.ChildId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class VisitsBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TreatmentService treatments;

    @Autowired
    SiteService sites;

    @Autowired
    TransferService transfers;

    @Autowired
    Ids ids;

    TestDoor.Sender surgeon;
    UUID nurse;
    ChildId child;
    LocalDate today;

    @BeforeEach
    void aChildWithAPlateOfFourMonths() {
        surgeon = reader.surgeon();
        nurse = network.staff(surgeon.site().value(), "NURSE");
        child = reader.child(surgeon, LocalDate.of(2016, 5, 20));
        today = surgeon.does(() -> sites.today(surgeon.site()));
        var placed = TestTreatment.plate(
                today.minusMonths(4), TestTreatment.TIBIA, PlateSide.LATERAL, new ImplantId(ids.next()));
        var elsewhere = new ProcedureData(placed.on(), true, null, null, placed.acts(), placed.next());
        var outcome = surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), elsewhere));
        Assertions.assertThat(outcome.isRecorded()).isTrue();
    }

    @OnEachScreen
    void showsEveryLimitThatWasSignedWithWhatItChanged(Screen screen) {
        try (var person = Browser.person(port, screen).signIn(network, surgeon.staff())) {
            var page = person.page();
            person.open("limits");
            assertThat(page.getByText("What was signed here")).isHidden();
            sign(page, "First look after registering, days", "21", "as the department agreed");
            sign(page, "From look to theatre until records tell, months", "1.5", "a second list in May");
            var signed = page.locator(".limits-history ol > li");
            assertThat(signed).hasCount(2);
            assertThat(signed.first()).containsText("In force since " + DateText.of(today));
            assertThat(signed.first()).containsText("until records tell, months: 1.5 (before 1)");
            assertThat(signed.last()).containsText("First look after registering, days: 21 (before 28)");
            assertThat(signed.last()).containsText("as the department agreed");
            person.settle()
                    .picture("limits-signed-" + screen)
                    .assertAccessible()
                    .assertFits();
        }
    }

    private static void sign(Page page, String limit, String value, String why) {
        page.getByLabel(limit).fill(value);
        page.getByLabel("Why these").fill(why);
        button(page, "Sign these limits").click();
        assertThat(page.getByText("Signed. The dates of visits already open follow tonight."))
                .isVisible();
        assertThat(page.getByLabel("Why these")).hasValue("");
    }

    @OnEachScreen
    void whoWasTwiceNotBroughtIsRecalledArrivesIsFilmedAndIsDueLater(Screen screen) {
        try (var person = signedIn(screen)) {
            var page = person.page();
            person.open(visits());
            person.settle().picture("visits-" + screen).assertAccessible().assertFits();
            miss(page);
            miss(page);
            assertThat(page.getByText("Not brought 2 times")).isVisible();
            assertThat(page.getByText("The local safeguarding policy leads")).isVisible();
            person.settle().picture("visits-not-brought-" + screen).assertAccessible();

            person.open("recall");
            var line = page.locator(".recall-lines > li");
            assertThat(line).containsText("not brought 2 times");
            assertThat(line).containsText("plate in, no film since: nobody knows");
            person.settle().picture("recall-" + screen).assertAccessible().assertFits();
            tryToReach(person);
            assertThat(line).containsText("Letter: sent");
            person.settle().picture("recall-tried-" + screen);

            line.getByRole(AriaRole.LINK).click();
            page.waitForURL(url -> url.contains("/visits"));
            button(page, "Came today").click();
            assertThat(page.getByText("Written down.")).isVisible();
            assertThat(page.locator(".why")).containsText("no film since the plate was placed");

            var film = reader.film(surgeon, child, today);
            reader.signed(surgeon, film);
            person.open(visits());
            assertThat(page.locator(".due-days")).containsText(DateText.of(today.plusMonths(6)));
            person.open("recall");
            assertThat(page.locator(".recall-lines > li")).hasCount(0);
            person.picture("recall-empty-" + screen).assertAccessible().assertFits();
            passedOn(screen, person);
        }
    }

    /** Until the other hospital takes the child over, this one holds visit and recall, and both see it. */
    private void passedOn(Screen screen, Person person) {
        var there = new SiteId(network.site());
        var colleague = network.staff(there.value(), "NURSE");
        surgeon.does(() -> transfers.ask(child, there, "the family moved to the coast"));
        person.open("recall");
        var section = person.page().locator("section", new Page.LocatorOptions().setHasText("On the way between"));
        assertThat(section).containsText("holds the visit and the recall until the other one takes the child over");
        assertThat(section.getByRole(AriaRole.LINK)).hasText("INVENTED, Child");
        person.settle().picture("recall-transfer-" + screen).assertAccessible().assertFits();
        try (var other = Browser.person(port, screen).signIn(network, colleague)) {
            other.open("recall");
            other.settle()
                    .picture("recall-transfer-asked-" + screen)
                    .assertAccessible()
                    .assertFits();
            button(other.page(), "Take over").click();
            other.page().waitForURL(url -> url.contains("/visits"));
            assertThat(other.page().getByText("Next visit")).isVisible();
        }
        person.open("recall");
        assertThat(section).containsText("That hospital has care, visit and recall.");
    }

    @Test
    void whatIsTypedOfAnAttemptIsThereAfterTheWindowWasLost() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open("recall");
            button(page, "Write a letter: INVENTED, Child").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            dialog.getByLabel("Note").fill("the aunt answers after six");
            untilKept("the aunt answers after six");
            person.open("recall");
            button(page, "Write a letter: INVENTED, Child").click();
            assertThat(dialog.getByText("Here is what you typed before")).isVisible();
            assertThat(dialog.getByLabel("Note")).hasValue("the aunt answers after six");
            person.settle().picture("recall-attempt-draft").assertAccessible();
            person.choose(dialog.getByLabel("What came of it"), "sent");
            button(dialog, "Write down").click();
            assertThat(page.locator(".recall-lines > li").first()).containsText("Letter: sent");
            button(page, "Give a date: INVENTED, Child").click();
            assertThat(dialog.getByText("INVENTED, Child")).isVisible();
            dialog.getByLabel("Day").fill(DateText.of(today.minusDays(1)));
            page.keyboard().press("Tab");
            button(dialog, "Keep the date").click();
            assertThat(dialog.getByLabel("Day")).hasAttribute("aria-invalid", "true");
            dialog.getByLabel("Day").fill(DateText.of(today));
            page.keyboard().press("Tab");
            button(dialog, "Keep the date").click();
            assertThat(dialog).hasCount(0);
            person.open(visits());
            assertThat(happened(page)).containsText("Date given");
            assertThat(page.locator("section", tried())).containsText("Letter: sent");
            assertThat(page.locator("section", tried())).containsText("the aunt answers after six");
        }
    }

    @Test
    void whatIsTypedOfTheFamilyAndOfAVisitIsThereAfterTheWindowWasLost() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open(visits());
            page.getByLabel("Telephone", new Page.GetByLabelOptions().setExact(true))
                    .fill("555-0142");
            button(page, "Another telephone").click();
            page.getByLabel("Telephone", new Page.GetByLabelOptions().setExact(true))
                    .nth(1)
                    .fill("555-0143");
            page.getByLabel("An interpreter is needed").check();
            untilKept("555-0143");
            button(page, "Was not brought").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            dialog.getByLabel("Note").fill("the bus did not run");
            untilKept("the bus did not run");

            person.open(visits());
            assertThat(page.getByText("Here is what you typed before")).isVisible();
            assertThat(page.getByLabel("Telephone", new Page.GetByLabelOptions().setExact(true))
                            .first())
                    .hasValue("555-0142");
            assertThat(page.getByLabel("Telephone", new Page.GetByLabelOptions().setExact(true))
                            .nth(1))
                    .hasValue("555-0143");
            assertThat(page.getByLabel("An interpreter is needed")).isChecked();
            person.settle().picture("visits-family-draft").assertAccessible();
            button(page, "Save").click();
            assertThat(page.getByText("Here is what you typed before")).isHidden();
            button(page, "Was not brought").click();
            assertThat(dialog.getByText("Here is what you typed before")).isVisible();
            assertThat(dialog.getByLabel("Note")).hasValue("the bus did not run");
            person.settle().picture("visit-not-brought-draft").assertAccessible();
            button(dialog, "Was not brought").click();
            assertThat(happened(page)).containsText("the bus did not run");
            Assertions.assertThat(drafts("%")).isZero();
        }
    }

    private void untilKept(String text) {
        Awaitility.await().until(() -> drafts("%" + text + "%") == 1);
    }

    private int drafts(String like) {
        return network.owner()
                .sql("select count(*)::int from draft where staff_id = ? and content::text like ?")
                .params(nurse, like)
                .query(Integer.class)
                .single();
    }

    @Test
    void theLastVisitIsNotGivenUpWithoutTheNext() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            person.open(visits());
            button(page, "Give up this visit").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            button(dialog, "Give up this visit").click();
            assertThat(dialog.getByText("A child in care always has a next visit. Say by when"))
                    .isVisible();
            person.settle().picture("visit-given-up").assertAccessible();
            dialog.getByLabel("Look next by").fill(DateText.of(today.plusDays(30)));
            page.keyboard().press("Tab");
            person.settle();
            button(dialog, "Give up this visit").click();
            assertThat(page.getByText("Written down.")).isVisible();
            assertThat(happened(page)).containsText("Visit given up");
        }
    }

    @Test
    void writesLettersOnceTheHospitalSaidWhomToCall() {
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.page();
            var early = page.request().get(letter(LetterKind.PLEASE_CALL, LetterLanguage.ENGLISH));
            Assertions.assertThat(early.status()).isEqualTo(409);
            Assertions.assertThat(early.text()).contains("whom to call");
            person.open(visits());
            assertThat(page.getByText("No letter can say yet where your hospital is")
                            .first())
                    .isVisible();

            person.open("limits");
            page.getByLabel("Address").fill("Lantern Road 5, Porthaven");
            page.getByLabel("Telephone for families").fill("555-0142");
            button(page, "Save").click();
            assertThat(page.getByText("Written down.")).isVisible();
            person.settle().picture("limits").assertAccessible().assertFits();

            for (var language : LetterLanguage.values()) {
                var answer = page.request().get(letter(LetterKind.MISSED, language));
                Assertions.assertThat(answer.status()).as(language.name()).isEqualTo(200);
                Assertions.assertThat(new String(answer.body(), 0, 5, StandardCharsets.US_ASCII))
                        .isEqualTo("%PDF-");
            }
            Assertions.assertThat(page.request()
                            .get(letter(LetterKind.INVITATION, LetterLanguage.ARABIC))
                            .text())
                    .contains("There is no date yet");
            person.open(visits());
            assertThat(page.getByText("There is no date yet").first()).isVisible();
            assertThat(page.getByText("No date yet: please call")).hasAttribute("href", Pattern.compile("PLEASE_CALL"));
            person.settle().picture("visits-letters").assertAccessible().assertFits();
        }
    }

    private static Locator happened(Page page) {
        return page.locator("section", new Page.LocatorOptions().setHasText("What happened"));
    }

    private static Page.LocatorOptions tried() {
        return new Page.LocatorOptions().setHasText("What was tried to reach the family");
    }

    private void miss(Page page) {
        button(page, "Was not brought").click();
        var dialog = page.getByRole(AriaRole.DIALOG);
        assertThat(dialog.getByText("The child was not brought")).isVisible();
        button(dialog, "Was not brought").click();
        assertThat(page.getByText("Written down.")).isVisible();
        assertThat(page.getByRole(AriaRole.DIALOG)).hasCount(0);
    }

    private static void tryToReach(Person person) {
        var page = person.page();
        button(page, "Write a letter: INVENTED, Child").click();
        var dialog = page.getByRole(AriaRole.DIALOG);
        person.choose(dialog.getByLabel("What came of it"), "sent");
        button(dialog, "Write down").click();
    }

    private String visits() {
        return "child/" + child.value() + "/visits";
    }

    private String letter(LetterKind kind, LetterLanguage language) {
        return "http://localhost:" + port + "/api/children/" + child.value() + "/letter?kind=" + kind + "&language="
                + language;
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, nurse);
    }
}
