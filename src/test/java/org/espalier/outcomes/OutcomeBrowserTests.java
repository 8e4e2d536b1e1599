package org.espalier.outcomes;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.options.AriaRole;
import java.util.Locale;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.outcomes.TestOutcomes.Film;
import org.espalier.reading.TestReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** An auditor's day: results, what stands behind them, and whether forecasts were honest. */
@IntegrationTest
class OutcomeBrowserTests {

    private static final String YEARS = "?from=2021&to=2023";
    private static final int MANY = 30;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestOutcomes courses;

    @ParameterizedTest
    @EnumSource(
            value = Screen.class,
            names = {"DESKTOP", "PHONE"})
    void seesWhatCameOfManyAndWhatHospitalsLookLikeSideBySide(Screen screen) {
        var site = network.site();
        fill(site, 34, 6, 3);
        fill(network.site(), 52, 7, 5);
        fill(network.site(), 18, 9, 6);
        fill(network.site(), 3, 1, 0);
        courses.foretellCrowd(site);
        try (var person = auditor(site, screen)) {
            person.open(Urls.OUTCOMES + YEARS);
            assertThat(text(person)).contains("34 of 43: 79\u00a0%").contains(Texts.text("outcomes.over.few"));
            assertThat(text(person)).contains(Texts.text("outcomes.hidden")).doesNotContain(Texts.text("outcomes.few"));
            look(person, "outcomes-full", screen);
            person.open(Urls.OUTCOMES_FORECASTS);
            assertThat(text(person)).contains(Texts.text("outcomes.what.in-90")).contains(Texts.text("outcomes.chart"));
            look(person, "outcomes-forecasts-full", screen);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Screen.class,
            names = {"DESKTOP", "PHONE"})
    void saysThatNothingCanBeConcludedOfFewAndOpensTheirCourse(Screen screen) {
        var surgeon = reader.surgeon();
        one(surgeon);
        try (var person = auditor(surgeon.site().value(), screen)) {
            person.open(Urls.OUTCOMES + YEARS);
            assertThat(text(person)).contains(Texts.text("outcomes.few"));
            look(person, "outcomes-few", screen);
            person.open(Urls.OUTCOMES_FORECASTS);
            assertThat(text(person)).contains(Texts.text("outcomes.few"));
            look(person, "outcomes-forecasts-few", screen);
            person.open(Urls.OUTCOMES_PLATES + YEARS);
            look(person, "outcomes-plates", screen);
            person.page().locator("main tbody").getByRole(AriaRole.LINK).first().click();
            person.at("/course/");
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Screen.class,
            names = {"DESKTOP", "PHONE"})
    void saysWhyThereIsNothingYetHoweverManyHospitalsThereAre(Screen screen) {
        for (int i = 0; i < MANY; i++) {
            network.site();
        }
        try (var person = auditor(network.site(), screen)) {
            person.open(Urls.OUTCOMES);
            assertThat(text(person)).contains(Texts.text("outcomes.results.none"));
            look(person, "outcomes-empty", screen);
            person.open(Urls.OUTCOMES_FORECASTS);
            assertThat(text(person)).contains(Texts.text("outcomes.forecasts.none"));
            look(person, "outcomes-forecasts-empty", screen);
        }
    }

    @Test
    void asksThatItBeToldAnew() {
        try (var person = auditor(network.site(), Screen.DESKTOP)) {
            person.open(Urls.OUTCOMES);
            Browser.button(person.page(), Texts.text("outcomes.anew")).click();
            person.page().getByText(Texts.text("outcomes.anew.asked")).waitFor();
        }
    }

    private void one(Sender surgeon) {
        var child = courses.child(surgeon, Film.of(2021, 9, 8), Film.of(2022, 2, 14.5));
        courses.plate(surgeon, child, TestOutcomes.PLATE, false);
        courses.foretold(surgeon, child, java.time.LocalDate.of(2022, 2, 1), 0.1, 82, 85, 86, 87, 90);
        courses.renew(surgeon.site());
    }

    private void fill(UUID site, int straight, int over, int failed) {
        courses.crowd(site, "STRAIGHT", straight);
        courses.crowd(site, "OVERSHOT", over);
        courses.crowd(site, "FAILED", failed);
    }

    private Person auditor(UUID site, Screen screen) {
        var auditor = network.staff(site, "AUDITOR");
        var person = Browser.person(port, screen);
        person.signIn(network.login(auditor), network.password(auditor));
        return person;
    }

    private static String text(Person person) {
        Locator main = person.page().locator("main");
        return main.innerText();
    }

    private static void look(Person person, String name, Screen screen) {
        var where = name + "-" + screen.name().toLowerCase(Locale.ROOT);
        person.picture(where);
        person.assertFits().assertAccessible();
        int drawn = 0;
        for (var drawing : person.page().locator(".outcome-drawing").all()) {
            drawing.scrollIntoViewIfNeeded();
            drawing.evaluate("image => image.scrollIntoView({block: 'start'})");
            person.picture(where + "-drawing-" + ++drawn);
        }
    }
}
