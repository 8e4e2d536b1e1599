package org.espalier.followup;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.assertj.core.api.Assertions;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.film.TestDoor;
import org.espalier.kit.DateText;
import org.espalier.patient.Child;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** The morning of the one who chases late families: by keyboard alone, and on paper. */
@IntegrationTest
class RecallBrowserTests {

    private static final String PRINTED =
            "window.print = () => window.onPaper = " + "document.querySelectorAll('.recall-lines > li').length";

    /** What has the focus, in the words a screen reader would say. */
    private static final String FOCUSED = """
            () => {
              const one = document.activeElement;
              const labels = (one.getAttribute('aria-labelledby') || '').split(' ')
                .map(id => document.getElementById(id)?.textContent || '').join(' ');
              return one.getAttribute('aria-label') || labels.trim() || one.textContent;
            }
            """;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    PatientService patients;

    @Autowired
    FamilyService families;

    TestDoor.Sender surgeon;
    UUID nurse;

    @BeforeEach
    void aHospital() {
        surgeon = reader.surgeon();
        nurse = network.staff(surgeon.site().value(), "NURSE");
    }

    @Test
    void printsEveryLateChildAlthoughTheScreenShowsAPage() {
        int all = RecallService.PAGE + 3;
        for (int i = 0; i < all; i++) {
            child();
        }
        try (var person = signedIn()) {
            var page = person.page();
            page.addInitScript(PRINTED);
            person.open("recall");
            assertThat(lines(page)).hasCount(RecallService.PAGE);
            button(page, "Print for a day without power").click();
            page.waitForFunction("() => window.onPaper !== undefined");
            Assertions.assertThat(page.evaluate("() => window.onPaper")).isEqualTo(all);
            assertThat(lines(page)).hasCount(all);
        }
    }

    @Test
    void isWorkedByKeyboardAlone() {
        var first = child();
        var second = child();
        List.of(first, second).forEach(this::withATelephone);
        try (var person = signedIn()) {
            var page = person.page();
            person.open("recall");
            int steps = 0;
            while (!onAChild(page)) {
                page.keyboard().press("Tab");
                Assertions.assertThat(++steps).as("keys to the first child").isLessThan(25);
            }
            page.keyboard().press("ArrowDown");
            page.waitForFunction("() => document.activeElement.closest('li').previousElementSibling !== null");
            page.keyboard().press("ArrowUp");
            page.waitForFunction("() => document.activeElement.closest('li').previousElementSibling === null");
            press(page, "Tab", 2);
            Assertions.assertThat(focused(page)).isEqualTo("Call: INVENTED, Child");
            page.keyboard().press("Enter");
            writeDownNoAnswer(page);
            assertThat(lines(page).first()).containsText("Call: no answer");
            page.waitForFunction("() => document.activeElement.closest('.recall-lines > li') !== null");
            page.keyboard().press("ArrowDown");
            page.waitForFunction("() => document.activeElement.closest('li').previousElementSibling !== null");
            page.keyboard().press("Enter");
            page.waitForURL(url -> url.contains("/visits"));
        }
    }

    @Test
    void takesTheFileOfTheBookingSystemAfterALookAtIt() {
        var child = child();
        var number = network.as(nurse, () -> patients.open(child, "identity"))
                .flatMap(Child::data)
                .map(ChildData::localNumber)
                .orElseThrow();
        var file = "number,booking,date,time,outcome\n" + "R-1,B-1,2030-01-07,09:30,\n" + number + ",B-2,7/1/2030,,\n"
                + number + ",B-3,2030-01-07,,\n";
        try (var person = signedIn()) {
            var page = person.page();
            person.open("bookings");
            page.locator("vaadin-upload input[type=file]")
                    .setInputFiles(new FilePayload("day.csv", "text/csv", file.getBytes(StandardCharsets.UTF_8)));
            assertThat(page.getByText("1 row can be taken, 2 cannot. Nothing is written down yet."))
                    .isVisible();
            assertThat(page.getByText("The date cannot be read. Write it as 2026-11-03."))
                    .isVisible();
            var rows = page.locator("ol.bookings > li");
            assertThat(rows.first()).containsText("nobody here");
            assertThat(rows.first()).containsText("No child of this hospital has this number.");
            assertThat(rows.nth(1)).containsText("INVENTED, Child, born " + DateText.of(LocalDate.of(2016, 5, 20)));
            assertThat(rows.last()).containsText("INVENTED, Child, born " + DateText.of(LocalDate.of(2016, 5, 20)));
            assertThat(button(page, "Take it")).isEnabled();
            person.settle().picture("bookings-preview").assertAccessible().assertFits();
        }
    }

    @Test
    void refusesATimeThatCannotBeReadAndAnOwnerWithoutANumber() {
        var child = child();
        try (var person = signedIn()) {
            var page = person.page();
            person.open("recall");
            button(page, "Give a date: INVENTED, Child").click();
            var dialog = page.getByRole(AriaRole.DIALOG);
            dialog.getByLabel("Day").fill("7 January 2030");
            dialog.getByLabel("Time").fill("half past");
            page.keyboard().press("Tab");
            button(page, "Keep the date").click();
            assertThat(dialog.getByText("Write the time as 09:30")).isVisible();
            dialog.getByLabel("Time").fill("09:30");
            page.keyboard().press("Tab");
            button(page, "Keep the date").click();
            assertThat(dialog).hasCount(0);
            person.open("child/" + child.value() + "/visits");
            page.getByLabel("Whose").fill("the aunt");
            button(page, "Save").click();
            assertThat(page.getByText("Type the number, or take away whose it is."))
                    .isVisible();
            assertThat(page.getByLabel("Whose")).hasValue("the aunt");
        }
    }

    /** The dialog has the focus as soon as it opens; it is left with a key, too. */
    private static void writeDownNoAnswer(Page page) {
        var dialog = page.getByRole(AriaRole.DIALOG);
        var outcome = dialog.getByLabel("What came of it");
        assertThat(outcome).isVisible();
        page.keyboard().press("Escape");
        assertThat(dialog).hasCount(0);
        Assertions.assertThat(focused(page)).isEqualTo("Call: INVENTED, Child");
        page.keyboard().press("Enter");
        assertThat(outcome).isVisible();
        tabTo(page, "What came of it");
        page.keyboard().press("Enter");
        var answer = page.getByRole(AriaRole.OPTION, new Page.GetByRoleOptions().setName("no answer"));
        assertThat(answer).isVisible();
        page.keyboard().type("no");
        page.keyboard().press("Enter");
        assertThat(answer).hasCount(0);
        tabTo(page, "Write down");
        page.keyboard().press("Enter");
        assertThat(dialog).hasCount(0);
    }

    private static void tabTo(Page page, String name) {
        for (int i = 0; i < 20; i++) {
            if (focused(page).contains(name)) {
                return;
            }
            page.keyboard().press("Tab");
        }
        Assertions.fail("no key leads to " + name);
    }

    private static void press(Page page, String key, int times) {
        for (int i = 0; i < times; i++) {
            page.keyboard().press(key);
        }
    }

    private static boolean onAChild(Page page) {
        return (boolean) page.evaluate("() => document.activeElement.matches('.recall-lines > li > a')");
    }

    private static String focused(Page page) {
        return String.valueOf(page.evaluate(FOCUSED)).strip();
    }

    private ChildId child() {
        return reader.child(surgeon, LocalDate.of(2016, 5, 20));
    }

    private void withATelephone(ChildId child) {
        var family = new Family(0, List.of(new Phone("555-0142", "mother", "en")), "en", false, null, null, null, null);
        network.as(nurse, () -> families.save(new SiteId(surgeon.site().value()), child, family));
    }

    private static Locator lines(Page page) {
        return page.locator(".recall-lines > li");
    }

    private Person signedIn() {
        return Browser.person(port, Screen.DESKTOP).signIn(network, nurse);
    }
}
