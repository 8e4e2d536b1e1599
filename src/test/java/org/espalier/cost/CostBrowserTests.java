package org.espalier.cost;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Files;
import java.util.Locale;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestWorld;
import org.espalier.TestWorld.Hospital;
import org.espalier.access.SiteId;
import org.espalier.access.SiteService;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.platform.Ids;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.RecordOutcome;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A cost administrator at work, who meets no child's name or number on any screen or in any file. */
@IntegrationTest
class CostBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestWorld world;

    @Autowired
    TestCost costs;

    @Autowired
    TreatmentService treatments;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    Hospital hospital;
    UUID administrator;

    @BeforeEach
    void aHospitalThatKnowsWhatThingsCost() {
        hospital = world.hospital();
        administrator = costs.administrator(hospital.site());
    }

    @Test
    void setsATariffSeesWhatAnOperationIsChargedAndPutsItRight() throws java.io.IOException {
        try (var person = administrator(Screen.DESKTOP)) {
            person.open(Urls.COSTS_TARIFFS);
            var form = section(person, "cost.set-one");
            pick(person, form, "cost.item", Texts.of(TariffItem.BED_DAY));
            form.getByLabel(Texts.text("cost.the-price")).fill("512.40");
            form.getByLabel(Texts.text("cost.valid-from")).fill("1 January 2024");
            press(person, "cost.set");
            assertThat(form.getByText(Texts.text("cost.source.missing"))).isVisible();
            assertThat(form.getByLabel(Texts.text("cost.the-price")).inputValue())
                    .isEqualTo("512.40");
            form.getByLabel(Texts.text("cost.source")).fill("Invented price list");
            form.getByLabel(Texts.text("cost.source")).press("Tab");
            press(person, "cost.set");
            assertThat(person.page().getByText(Texts.text("cost.set-done"))).isVisible();
            assertThat(person.page().locator("table").first().innerText()).contains("EUR 512.40 a day");
            person.assertFits().assertAccessible().picture("costs-tariff-set-desktop");

            operate();
            person.open(Urls.COSTS);
            var lines = section(person, "cost.charges-of", 0).locator("tbody tr");
            var night = lines.filter(new Locator.FilterOptions().setHasText(Texts.of(TariffItem.BED_DAY)));
            assertThat(night.first().innerText()).contains("EUR 512.40").contains("64.05");
            person.assertFits().assertAccessible().picture("costs-charges-after-operation-desktop");
            assertFile(person, "cost.csv", "512.40");
            assertFile(person, "cost.xlsx", null);

            night.first().getByRole(AriaRole.LINK).click();
            person.settle();
            var account = section(person, "cost.charges", 0).locator("tbody tr");
            account.filter(new Locator.FilterOptions().setHasText("512.40"))
                    .first()
                    .getByRole(AriaRole.BUTTON)
                    .click();
            var dialog = person.page().getByRole(AriaRole.DIALOG);
            dialog.getByLabel(Texts.text("cost.adjust.quantity", Texts.of(TariffItem.BED_DAY)))
                    .fill("2");
            dialog.getByLabel(Texts.text("cost.reason")).fill("stayed with a fever");
            button(dialog, Texts.text("cost.adjust")).click();
            person.settle();
            assertThat(person.page().getByText(Texts.text("cost.adjust.done"))).isVisible();
            assertThat(person.page().getByText("EUR 1,024.80").first()).isVisible();
            person.assertFits().assertAccessible().picture("costs-account-adjusted-desktop");
        }
    }

    @Test
    void seesEveryScreenOfCostsAndNoName() {
        operate();
        costs.renew(hospital.site(), hospital.child());
        var code = network.as(administrator, () -> sites.get(hospital.site())).code();
        var account = costs.account(hospital.surgeon(), hospital.child());
        for (var screen : new Screen[] {Screen.DESKTOP, Screen.PHONE}) {
            try (var person = administrator(screen)) {
                for (var url : new String[] {
                    Urls.COSTS,
                    Urls.COSTS_TARIFFS,
                    Urls.COSTS_EPISODES,
                    Urls.COSTS_PATHWAYS,
                    Urls.COSTS_BUDGET,
                    Urls.costAccount(code, account.pseudonym().text())
                }) {
                    person.open(url);
                    assertThat(person.page().locator("h1").first()).isVisible();
                    person.picture(url.replaceAll("\\?.*", "").replace('/', '-') + "-"
                            + screen.name().toLowerCase(Locale.ROOT));
                    person.assertFits().assertAccessible();
                }
            }
        }
    }

    @Test
    void choosesAnotherHospitalAndStaysAtThePlace() {
        var other = network.site();
        network.member(administrator, other, "COST_ADMINISTRATOR");
        var name = network.as(administrator, () -> sites.get(new SiteId(other))).name();
        try (var person = administrator(Screen.PHONE)) {
            person.open(Urls.COSTS_BUDGET);
            pick(person, person.page().locator(".screen-head"), "kit.hospital", name);
            person.at(Urls.COSTS_BUDGET + "?site=")
                    .assertFits()
                    .assertAccessible()
                    .picture("costs-hospital-phone");
            person.page()
                    .getByRole(
                            AriaRole.LINK,
                            new Page.GetByRoleOptions()
                                    .setName(Texts.text("cost.episodes"))
                                    .setExact(true))
                    .click();
            person.settle();
            assertThat(person.page().getByText(Texts.text("cost.episodes-of", name)))
                    .isVisible();
        }
    }

    @Test
    void aSurgeonSeesWhatTheCareOfAChildCost() {
        operate();
        costs.renew(hospital.site(), hospital.child());
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            person.signIn(network, hospital.surgeon());
            person.open(Urls.costs(hospital.child().value()));
            var account = costs.account(hospital.surgeon(), hospital.child());
            assertThat(person.page()
                            .getByText(Texts.text(
                                    "cost.child.known-as", account.pseudonym().text())))
                    .isVisible();
            assertThat(person.page()
                            .getByText(Texts.text(
                                    "cost.limb-heading",
                                    Texts.of(org.espalier.science.quantity.Side.RIGHT),
                                    Texts.of(Pathway.GUIDED_GROWTH))))
                    .isVisible();
            person.assertFits().assertAccessible().picture("costs-child-desktop");
        }
    }

    /** A plate is put in today. */
    private void operate() {
        var outcome = network.as(
                hospital.surgeon(),
                () -> treatments.record(
                        hospital.child(),
                        new ProcedureId(ids.next()),
                        TestTreatment.plate(
                                sites.today(hospital.site()),
                                TestTreatment.FEMUR,
                                PlateSide.MEDIAL,
                                TestTreatment.implant())));
        assertThat(outcome).isInstanceOf(RecordOutcome.Recorded.class);
    }

    private Person administrator(Screen screen) {
        var person = Browser.person(
                port, screen, TestWorld.CHILD.familyName(), String.valueOf(TestWorld.CHILD.givenName()), "CANARY-7731");
        return person.signIn(network, administrator);
    }

    private static Locator section(Person person, String key, Object... arguments) {
        var name = arguments.length == 0 ? Texts.text(key) : Texts.text(key, "").replaceAll("[,{ ].*", "");
        return person.page()
                .locator("section")
                .filter(new Locator.FilterOptions()
                        .setHas(person.page()
                                .getByRole(
                                        AriaRole.HEADING,
                                        new Page.GetByRoleOptions()
                                                .setName(java.util.regex.Pattern.compile("^" + name)))))
                .last();
    }

    private static void pick(Person person, Locator form, String key, String value) {
        person.choose(form.getByLabel(Texts.text(key)), value);
    }

    private static void press(Person person, String key) {
        button(person.page(), Texts.text(key)).click();
        person.settle();
    }

    private static void assertFile(Person person, String key, @org.jspecify.annotations.Nullable String holding)
            throws java.io.IOException {
        var download = person.page().waitForDownload(() -> person.page()
                .getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(Texts.text(key)))
                .click());
        var bytes = Files.readAllBytes(download.path());
        assertThat(bytes).isNotEmpty();
        if (holding != null) {
            assertThat(new String(bytes, java.nio.charset.StandardCharsets.UTF_8))
                    .contains(holding)
                    .doesNotContain(TestWorld.CHILD.familyName());
        }
    }
}
