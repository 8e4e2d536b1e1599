package org.espalier.plan;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

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
import org.espalier.prognosis.TestCourse;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class PlanBrowserTests {

    @LocalServerPort
    int port;

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

    @OnEachScreen
    void showsOptionsSideBySideWithTheirReasons(Screen screen) {
        var child = courses.underWay(surgeon);
        try (var person = signedIn(screen)) {
            var page = person.open("child/" + child.value() + "/plan").page();
            assertThat(page.getByRole(AriaRole.ROWHEADER, rowHeader("1. Watch")))
                    .isVisible();
            assertThat(page.getByText("chance that it never comes").first()).isVisible();
            assertThat(page.getByText("a plate is in already").first()).isVisible();
            assertThat(page.getByAltText("Course of bony HKA")).isVisible();
            assertThat(page.getByText("none is advised")).isVisible();
            person.assertAccessible().assertFits().picture("plan-" + screen);
        }
    }

    @Test
    void keepsWhatTheSurgeonMeansByKeysAlone() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 3)));
        try (var person = signedIn(Screen.DESKTOP)) {
            var page = person.open("child/" + child.value() + "/plan?limb=left").page();
            page.getByRole(AriaRole.BUTTON, button("Keep options and intent")).press("Enter");
            person.settle();
            assertThat(page.getByText("Choose what you mean to do")).isVisible();
            page.getByLabel("What do you mean to do?").press("Enter");
            assertThat(page.getByRole(AriaRole.OPTION).first()).isVisible();
            page.keyboard().press("ArrowDown");
            page.keyboard().press("Enter");
            person.settle();
            page.waitForResponse(
                    answer -> answer.url().contains("v-r=uidl"),
                    () -> page.getByLabel("What is it to reach?").fill("a straight leg"));
            person.settle();
            page.reload();
            assertThat(page.getByText("What you typed before is here again")).isVisible();
            assertThat(page.getByLabel("What is it to reach?")).hasValue("a straight leg");
            page.getByLabel("What do you expect to happen?").fill("straight within two years");
            page.getByRole(AriaRole.BUTTON, button("Keep options and intent")).press("Enter");
            person.settle();
            assertThat(page.getByText("To reach: a straight leg")).isVisible();
            person.assertAccessible().picture("plan-kept");
        }
    }

    private static Page.GetByRoleOptions rowHeader(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private static Page.GetByRoleOptions button(String name) {
        return new Page.GetByRoleOptions().setName(name);
    }

    private Person signedIn(Screen screen) {
        return Browser.person(port, screen).signIn(network, surgeon.staff());
    }
}
