package org.espalier.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.Set;
import java.util.UUID;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SignOnService;
import org.espalier.access.SiteId;
import org.espalier.access.StaffId;
import org.espalier.access.StaffService;
import org.espalier.access.provider.TestProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.DynamicPropertyRegistry;
import org.springframework.test.context.DynamicPropertySource;

/** Signs in at a provider of OpenID Connect that runs beside the program. */
@IntegrationTest
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SingleSignOnBrowserTests {

    private static final int PROVIDER = TestProvider.freePort();

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    SignOnService signOn;

    @Autowired
    SecondFactorService factors;

    @Autowired
    StaffService staff;

    TestProvider provider;

    @DynamicPropertySource
    static void provider(DynamicPropertyRegistry properties) {
        properties.add("espalier.access.sign-on.issuer", () -> TestProvider.issuer(PROVIDER));
        properties.add("espalier.access.sign-on.name", () -> "Orchard ID");
        properties.add("espalier.access.sign-on.client-id", () -> TestProvider.CLIENT);
        properties.add("espalier.access.sign-on.client-secret", () -> TestProvider.SECRET);
    }

    @BeforeAll
    void theProviderRuns() {
        provider = new TestProvider(PROVIDER, port);
    }

    @AfterAll
    void theProviderStops() {
        provider.close();
    }

    private UUID linked(UUID site, String subject) {
        var nurse = network.staff(site, "NURSE");
        network.as(network.operator(), () -> {
            signOn.link(new StaffId(nurse), subject);
            return nurse;
        });
        return nurse;
    }

    private static Page signsOn(Person person, String subject) {
        person.open("login");
        var page = person.page();
        page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Sign in with Orchard ID"))
                .click();
        page.locator("input[name=username]").fill(subject);
        page.locator("input[name=password]").fill(TestProvider.PASSWORD);
        page.locator("input[name=password]").press("Enter");
        page.waitForURL(url -> url.startsWith("http://localhost"));
        return page;
    }

    private void unlink(UUID who) {
        network.as(network.operator(), () -> {
            signOn.unlink(new StaffId(who));
            return who;
        });
    }

    @Test
    void linkedPersonComesInAndNobodyElseDoes() {
        var nurse = linked(network.site(), TestProvider.WITH_ONE_FACTOR);
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            person.open("login")
                    .picture("login-sign-on-DESKTOP")
                    .assertAccessible()
                    .assertFits();
            var page = signsOn(person, TestProvider.WITH_ONE_FACTOR);
            assertThat(page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Sign out")))
                    .isVisible();
        }
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            var page = signsOn(person, TestProvider.UNKNOWN);
            assertThat(page.getByText("not linked to anybody here")).isVisible();
            person.settle().picture("login-sign-on-refused-DESKTOP");
        }
        unlink(nurse);
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            assertThat(signsOn(person, TestProvider.WITH_ONE_FACTOR).getByText("not linked to anybody here"))
                    .isVisible();
        }
    }

    @Test
    void endsAtOnceForWhoeverIsShutOut() {
        var nurse = linked(network.site(), TestProvider.WITH_ONE_FACTOR);
        network.as(network.operator(), () -> {
            staff.shutOut(new StaffId(nurse));
            return nurse;
        });
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            assertThat(signsOn(person, TestProvider.WITH_ONE_FACTOR).getByText("not linked to anybody here"))
                    .isVisible();
        }
        unlink(nurse);
    }

    @Test
    void providersWordOfSeveralFactorsIsEnoughWhereASecondOneIsDemandedAndOneIsNot() {
        var site = network.site();
        network.as(network.operator(), () -> {
            factors.demandAt(new SiteId(site), Set.of(Role.NURSE));
            return site;
        });
        var several = linked(site, TestProvider.WITH_SEVERAL_FACTORS);
        var one = linked(site, TestProvider.WITH_ONE_FACTOR);
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            var page = signsOn(person, TestProvider.WITH_SEVERAL_FACTORS);
            assertThat(page.getByText("Today").first()).isVisible();
        }
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            var page = signsOn(person, TestProvider.WITH_ONE_FACTOR);
            assertThat(page.getByText("Your hospital asks for a second factor")).isVisible();
        }
        unlink(several);
        unlink(one);
    }
}
