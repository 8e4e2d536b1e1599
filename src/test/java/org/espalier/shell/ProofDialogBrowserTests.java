package org.espalier.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
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
import org.espalier.TestSession;
import org.junit.jupiter.api.BeforeEach;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.TestPropertySource;

/** Who came to a page left open is asked who they are, and does nothing until they said so. */
@IntegrationTest
@TestPropertySource(properties = "espalier.access.session.proof=2s")
class ProofDialogBrowserTests {

    private static final int PAST_THE_PROOF_MS = 2_500;

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    UUID nurse;
    TestSession elsewhere;

    @BeforeEach
    void signedInElsewhereToo() {
        nurse = network.staff(network.site(), "NURSE");
        elsewhere = new TestSession(port).signIn(network.login(nurse), network.password(nurse));
        Assertions.assertThat(isSignedInElsewhere()).isTrue();
    }

    @OnEachScreen
    void doesNothingUntilThePasswordIsGivenAgain(Screen screen) {
        try (var person = Browser.person(port, screen)) {
            person.signIn(network, nurse).open("account");
            person.page().waitForTimeout(PAST_THE_PROOF_MS);
            var dialog = ask(person);
            person.settle()
                    .picture("account-proof-" + screen)
                    .assertAccessible()
                    .assertFits();
            assertThat(password(dialog)).isFocused();
            button(dialog, "Cancel").click();
            assertThat(password(dialog)).isHidden();
            Assertions.assertThat(isSignedInElsewhere()).isTrue();

            ask(person);
            give(dialog, "not the " + network.password(nurse));
            assertThat(dialog.getByText("This is not your password. Type it again; capitals matter."))
                    .isVisible();
            Assertions.assertThat(isSignedInElsewhere()).isTrue();

            give(dialog, network.password(nurse));
            assertThat(password(dialog)).isHidden();
            assertThat(button(person.page().locator("body"), "Sign out everywhere else"))
                    .isHidden();
            Assertions.assertThat(isSignedInElsewhere()).isFalse();
        }
    }

    private static Locator ask(Person person) {
        button(person.page().locator("body"), "Sign out everywhere else").click();
        var dialog = person.page().getByRole(AriaRole.DIALOG, new Page.GetByRoleOptions().setName("Who are you?"));
        assertThat(password(dialog)).isVisible();
        return dialog;
    }

    private static void give(Locator dialog, String password) {
        password(dialog).fill(password);
        password(dialog).press("Enter");
    }

    private static Locator password(Locator dialog) {
        return dialog.getByLabel("Current password", new Locator.GetByLabelOptions().setExact(true));
    }

    private boolean isSignedInElsewhere() {
        return elsewhere.get("account").statusCode() == 200;
    }
}
