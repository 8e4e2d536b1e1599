package org.espalier.shell;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.NotFoundException;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.ByteArrayInputStream;
import java.time.Clock;
import java.util.Base64;
import java.util.Set;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.OnEachScreen;
import org.espalier.TestNetwork;
import org.espalier.access.Role;
import org.espalier.access.SecondFactorService;
import org.espalier.access.SiteId;
import org.espalier.access.TestCodes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class SecondStepBrowserTests {

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    SecondFactorService factors;

    @Autowired
    Clock clock;

    @BeforeEach
    void nobodyHasToWait() {
        network.owner().sql("delete from sign_in_throttle").update();
    }

    @OnEachScreen
    void personSetsUpCodesAndIsAskedForOneAtTheNextSignIn(Screen screen) throws Exception {
        var nurse = network.staff(network.site(), "NURSE");
        var login = network.login(nurse);
        var password = network.password(nurse);
        String secret;
        String recovery;
        try (var person = Browser.person(port, screen).signIn(login, password)) {
            var page = person.open("account").page();
            button(page, "Set up codes").click();
            var picture = page.locator("img.qr");
            assertThat(picture).isVisible();
            secret = page.locator(".secret").textContent().replace(" ", "");
            assertThat(read(picture)).contains("secret=" + secret).startsWith("otpauth://totp/Espalier:");
            picture.scrollIntoViewIfNeeded();
            person.settle()
                    .picture("second-factor-set-up-" + screen)
                    .assertAccessible()
                    .assertFits();
            page.getByLabel("First code from the app").fill("000000");
            button(page, "Confirm").click();
            assertThat(page.getByText("This code does not fit").first()).isVisible();
            page.getByLabel("First code from the app").fill(TestCodes.now(secret, clock));
            button(page, "Confirm").click();
            assertThat(page.locator(".recovery-codes li")).hasCount(8);
            recovery = page.locator(".recovery-codes li").first().textContent();
            person.settle()
                    .picture("recovery-codes-" + screen)
                    .assertAccessible()
                    .assertFits();
            button(page, "I have kept them").click();
            assertThat(page.getByText("8 recovery codes are left")).isVisible();
        }
        isAskedForACode(login, password, secret, screen);
        try (var person = Browser.person(port, screen)) {
            var page = passwordOf(person, login, password);
            page.getByLabel("Code").fill(recovery);
            button(page, "Go in").click();
            assertThat(page.getByText("Today").first()).isVisible();
        }
    }

    private void isAskedForACode(String login, String password, String secret, Screen screen) {
        try (var person = Browser.person(port, screen)) {
            var page = passwordOf(person, login, password);
            var before = session(page);
            page.getByLabel("Code").fill("123 456");
            button(page, "Go in").click();
            assertThat(page.getByText("or it was used before").first()).isVisible();
            person.settle().picture("second-step-" + screen).assertAccessible().assertFits();
            page.getByLabel("Code").fill(TestCodes.next(secret, clock));
            button(page, "Go in").click();
            assertThat(button(page, "Sign out")).isVisible();
            assertThat(page.getByText("Today").first()).isVisible();
            assertThat(session(page)).isNotEqualTo(before);
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Screen.class,
            names = {"DESKTOP"})
    void hospitalThatDemandsItHasAPersonSetUpCodesBeforeAnythingElse(Screen screen) {
        UUID site = network.site();
        network.as(network.operator(), () -> {
            factors.demandAt(new SiteId(site), Set.of(Role.SURGEON));
            return site;
        });
        var surgeon = network.staff(site, "SURGEON");
        try (var person = Browser.person(port, screen)) {
            var page = passwordOf(person, network.login(surgeon), network.password(surgeon));
            person.open("children");
            assertThat(page.getByText("Your hospital asks for a second factor")).isVisible();
            button(page, "Set up codes").click();
            var secret = page.locator(".secret").textContent();
            page.getByLabel("First code from the app").fill(TestCodes.now(secret, clock));
            button(page, "Confirm").click();
            button(page, "I have kept them").click();
            assertThat(page.getByText("Today").first()).isVisible();
        }
    }

    private static Page passwordOf(Person person, String login, String password) {
        person.open("login");
        var page = person.page();
        page.locator("input[name=username]").fill(login);
        page.locator("input[name=password]").fill(password);
        page.locator("input[name=password]").press("Enter");
        page.waitForURL(url -> url.endsWith("login/code"));
        person.settle();
        return page;
    }

    private static String session(Page page) {
        return page.context().cookies().stream()
                .filter(cookie -> cookie.name.equals("JSESSIONID"))
                .map(cookie -> cookie.value)
                .findFirst()
                .orElseThrow();
    }

    private static String read(Locator picture) throws Exception {
        var bytes = Base64.getDecoder().decode(picture.getAttribute("src").replaceFirst(".*,", ""));
        var source = new BufferedImageLuminanceSource(ImageIO.read(new ByteArrayInputStream(bytes)));
        try {
            return new QRCodeReader()
                    .decode(new BinaryBitmap(new HybridBinarizer(source)))
                    .getText();
        } catch (NotFoundException e) {
            throw new AssertionError("no code in the picture", e);
        }
    }
}
