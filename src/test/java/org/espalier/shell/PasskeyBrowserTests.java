package org.espalier.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.UUID;
import org.assertj.core.api.Assertions;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** Passkeys in a real browser, which holds its keys in an authenticator of its own making. */
@IntegrationTest
class PasskeyBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    UUID nurse;

    /** Why a key does not open the door. */
    private enum Flaw {
        NONE_HELD,
        PERSON_NOT_VERIFIED,
        REMOVED_FROM_THE_ACCOUNT,
        OWNER_SHUT_OUT
    }

    @BeforeEach
    void aNurse() {
        nurse = network.staff(network.site(), "NURSE");
    }

    @OnEachScreen
    void addsAPasskeyAndSignsInWithIt(Screen screen) {
        try (var person = Browser.person(port, screen)) {
            new Authenticator(person.page());
            addPasskey(person);
            person.settle()
                    .picture("account-passkey-" + screen)
                    .assertAccessible()
                    .assertFits();
            atTheDoor(person).click();
            person.page().waitForURL(url -> !url.contains("login"));
            assertThat(person.settle().page().getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setLevel(1)))
                    .isVisible();
            Assertions.assertThat(uses()).isEqualTo(1);
            seesAndEndsWhatOpensTheAccount(person, screen);
        }
    }

    /**
     * The session by password was left behind when the cookies were cleared, and stands in the list until it is ended.
     */
    private void seesAndEndsWhatOpensTheAccount(Person person, Screen screen) {
        var page = person.open("account").page();
        assertThat(page.getByText("this one")).hasCount(1);
        var there = page.getByText("Sign out there", new Page.GetByTextOptions().setExact(true));
        assertThat(there).hasCount(1);
        page.getByText("Where you are signed in").scrollIntoViewIfNeeded();
        person.settle().picture("account-sessions-" + screen).assertAccessible().assertFits();
        button(person.page(), "Sign out everywhere else").click();
        assertThat(there).hasCount(0);
        assertThat(page.getByText("last used").first()).isVisible();
        page.locator(".ways-in vaadin-button").first().click();
        assertThat(page.getByText("You have no passkey yet.")).isVisible();
    }

    @Test
    void saysSoWhenTheSameDeviceIsAddedAgain() {
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            new Authenticator(person.page());
            addPasskey(person);
            button(person.page(), "Add a passkey for this device").click();
            assertThat(person.page().getByRole(AriaRole.ALERT)).containsText("Your device may know one already");
            assertThat(person.page().getByText("Your passkey was added.")).isHidden();
        }
    }

    @ParameterizedTest
    @EnumSource(Flaw.class)
    void refusesAKeyThatDoesNotOpenAndSaysWhatToDo(Flaw flaw) {
        try (var person = Browser.person(port, Screen.DESKTOP)) {
            var authenticator = new Authenticator(person.page());
            addPasskey(person);
            var signIn = atTheDoor(person);
            switch (flaw) {
                case NONE_HELD -> authenticator.forget();
                case PERSON_NOT_VERIFIED -> authenticator.doubt();
                case REMOVED_FROM_THE_ACCOUNT -> change("delete from passkey where staff_id = ?");
                case OWNER_SHUT_OUT -> change("update staff set active = false where id = ?");
            }
            signIn.click();
            assertThat(person.page().getByText("The passkey was not accepted.")).isVisible();
            Assertions.assertThat(person.page().url()).contains("login");
            person.open("account");
            Assertions.assertThat(person.page().url()).contains("login");
        }
    }

    private void addPasskey(Person person) {
        person.signIn(network, nurse).open("account");
        button(person.page(), "Add a passkey for this device").click();
        assertThat(person.page().getByText("Your passkey was added.")).isVisible();
    }

    private com.microsoft.playwright.Locator atTheDoor(Person person) {
        person.page().context().clearCookies();
        person.open("login");
        return button(person.page(), "Sign in with a passkey");
    }

    private int uses() {
        return network.owner()
                .sql("select count(*) from passkey where staff_id = ? and last_used_at > created_at")
                .param(nurse)
                .query(Integer.class)
                .single();
    }

    private void change(String sql) {
        network.owner().sql(sql).param(nurse).update();
    }

    /** The lock of the device: holds passkeys, and knows its person by finger or face. */
    private static final class Authenticator {

        private final CDPSession browser;
        private final JsonObject named = new JsonObject();

        Authenticator(Page page) {
            browser = page.context().newCDPSession(page);
            browser.send("WebAuthn.enable");
            var kind = new JsonObject();
            kind.addProperty("protocol", "ctap2");
            kind.addProperty("transport", "internal");
            kind.addProperty("hasResidentKey", true);
            kind.addProperty("hasUserVerification", true);
            kind.addProperty("isUserVerified", true);
            kind.addProperty("automaticPresenceSimulation", true);
            var asked = new JsonObject();
            asked.add("options", kind);
            named.add(
                    "authenticatorId",
                    browser.send("WebAuthn.addVirtualAuthenticator", asked).get("authenticatorId"));
        }

        void forget() {
            browser.send("WebAuthn.clearCredentials", named);
        }

        /** From now on the person before the device is not the one it knows. */
        void doubt() {
            var doubted = named.deepCopy();
            doubted.addProperty("isUserVerified", false);
            browser.send("WebAuthn.setUserVerified", doubted);
        }
    }
}
