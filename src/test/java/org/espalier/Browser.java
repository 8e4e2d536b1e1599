package org.espalier;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.LoadState;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One real browser for all tests, and people who sit before it. What the server sends to a person is searched for
 * canaries: names and numbers planted in other hospitals' records, which nobody before this screen may ever be sent;
 * those of {@link Canaries#ABROAD} always.
 */
public final class Browser {

    /** The screens every view must fit. */
    public enum Screen {
        DESKTOP(1366, 768),
        TABLET(820, 1180),
        PHONE(390, 844);

        private final int width;
        private final int height;

        Screen(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    private static final Path PICTURES = Path.of("target", "pictures");
    private static final List<String> ARGUMENTS = List.of(
            "--no-sandbox",
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");
    private static final Set<Integer> WITHOUT_BODY = Set.of(204, 301, 302, 303, 304, 307, 308);
    private static final String BUNDLE = "VAADIN/build/";

    /**
     * For three pictures in a row the page has begun, nothing is asked of the server, and all styles and letters are
     * there: what a press sets off is asked for in the next ones.
     */
    private static final String QUIET = """
            async () => {
                const asks = client => client.isActive?.();
                const clients = () => Object.values(window.Vaadin?.Flow?.clients ?? {});
                const begun = () => document.querySelector('#outlet') === null
                    || (document.querySelector('#outlet > *') !== null && clients().length > 0);
                const busy = () => !begun() || clients().some(asks)
                    || [...document.querySelectorAll('link[rel=stylesheet]')].some(link => !link.sheet)
                    || document.fonts.status === 'loading';
                for (let quiet = 0; quiet < 3; quiet++) {
                    await new Promise(requestAnimationFrame);
                    if (busy()) {
                        quiet = -1;
                    }
                }
                return true;
            }""";

    /** A screen may be wider while it takes its shape. */
    private static final String FITS = """
            async () => {
                const wide = () => document.documentElement.scrollWidth > window.innerWidth;
                for (const until = performance.now() + 3000; wide() && performance.now() < until; ) {
                    await new Promise(requestAnimationFrame);
                }
                return !wide();
            }""";

    private static final double PATIENCE_MS = 30_000;

    private Browser() {}

    /** A person before a screen, in a session of their own. */
    public static final class Person implements AutoCloseable {

        private final BrowserContext context;
        private final Page page;
        private final String root;
        private final Queue<String> leaks = new ConcurrentLinkedQueue<>();
        private final List<String> canaries;

        private Person(int port, Screen screen, String language, List<String> canaries) {
            root = "http://localhost:" + port + "/";
            this.canaries =
                    Stream.concat(Canaries.ABROAD.stream(), canaries.stream()).toList();
            context = Chromium.RUNNING.newContext(new com.microsoft.playwright.Browser.NewContextOptions()
                    .setViewportSize(screen.width, screen.height)
                    .setLocale(language)
                    .setHasTouch(screen != Screen.DESKTOP));
            context.setDefaultTimeout(PATIENCE_MS);
            context.onRequestFinished(request -> search(request.response()));
            page = context.newPage();
            page.onWebSocket(
                    socket -> socket.onFrameReceived(frame -> search(String.valueOf(frame.text()), socket.url())));
        }

        public Page page() {
            return page;
        }

        public Person open(String path) {
            page.navigate(root + path);
            return settle();
        }

        /** Waits until the server has answered everything and the screen shows it. */
        public Person settle() {
            page.waitForLoadState(LoadState.NETWORKIDLE);
            page.waitForFunction(QUIET);
            return this;
        }

        /** Waits until the page of such an address stands. */
        public Person at(String part) {
            page.waitForURL(url -> url.contains(part));
            return settle();
        }

        public Person signIn(String login, String password) {
            open("login");
            page.locator("input[name=username]").fill(login);
            page.locator("input[name=password]").fill(password);
            page.locator("input[name=password]").press("Enter");
            page.waitForURL(url -> !url.contains("login"));
            return settle();
        }

        /** Signs in as a member of staff who is given a password for it. */
        public Person signIn(TestNetwork network, UUID staff) {
            return signIn(network.login(staff), network.password(staff));
        }

        /** Opens a list and takes the option of exactly this name. */
        public Person choose(Locator field, String option) {
            field.first().click();
            page.getByRole(
                            AriaRole.OPTION,
                            new Page.GetByRoleOptions().setName(option).setExact(true))
                    .first()
                    .click();
            return settle();
        }

        /** Fails on whatever the accessibility rules WCAG 2.2 A and AA find on the screen. */
        public Person assertAccessible() {
            var found = new AxeBuilder(page)
                    .setLegacyMode(true) // no frames of other origins: no second page is opened to gather them
                    .withTags(List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"))
                    .analyze();
            assertThat(found.getViolations())
                    .as(() -> found.getViolations().toString())
                    .isEmpty();
            return this;
        }

        /** Fails when the screen is wider than the glass. */
        public Person assertFits() {
            assertThat(page.evaluate(FITS)).as("the page scrolls sideways").isEqualTo(true);
            return this;
        }

        /** Keeps a picture of the screen for a person to look at. */
        public Person picture(String name) {
            page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(name + ".png")));
            return this;
        }

        /** What is still under way is broken off before the window closes. */
        @Override
        public void close() {
            page.navigate("about:blank");
            context.close();
            assertThat(leaks).as("canaries of other hospitals in answers").isEmpty();
        }

        /** Looks at an answer once it is whole: waiting for the rest of one would hold up the person. */
        private void search(@Nullable Response answer) {
            if (answer == null || answer.url().startsWith(root + BUNDLE)) {
                return;
            }
            search(answer.url() + answer.headers(), answer.url());
            if (!WITHOUT_BODY.contains(answer.status())) {
                try {
                    search(answer.text(), answer.url());
                } catch (PlaywrightException left) {
                    // The page was left before the answer was looked at; CanaryFilter has seen it where it was written.
                }
            }
        }

        private void search(String sent, String from) {
            var small = sent.toLowerCase(Locale.ROOT);
            canaries.stream()
                    .filter(canary -> small.contains(canary.toLowerCase(Locale.ROOT)))
                    .forEach(canary -> leaks.add(canary + " in " + from));
        }
    }

    /** A person who is sent nothing of the canaries, and nothing of those that are always there. */
    public static Person person(int port, Screen screen, String... canaries) {
        return new Person(port, screen, "en-GB", List.of(canaries));
    }

    /** A person who reads the screens in another language. */
    public static Person reading(int port, Screen screen, String language) {
        return new Person(port, screen, language, List.of());
    }

    /** The button of exactly this name. */
    public static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    /** The button of exactly this name in a part of the page. */
    public static Locator button(Locator within, String name) {
        return within.getByRole(
                AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(name).setExact(true));
    }

    /** Started when the first person sits down; it ends with the tests. */
    private static final class Chromium {

        private static final com.microsoft.playwright.Browser RUNNING = launched();

        /** What a test expects to see may take as long as what it does. */
        private static com.microsoft.playwright.Browser launched() {
            PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE_MS);
            return Playwright.create()
                    .chromium()
                    .launch(new BrowserType.LaunchOptions()
                            .setExecutablePath(executable())
                            .setArgs(ARGUMENTS));
        }
    }

    private static Path executable() {
        return Stream.of(
                        Optional.ofNullable(System.getenv("ESPALIER_CHROMIUM")).orElse(""),
                        "/usr/bin/chromium-headless-shell",
                        "/usr/bin/chromium",
                        "/usr/bin/chromium-browser",
                        "/usr/bin/google-chrome")
                .filter(name -> !name.isEmpty())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "No Chromium found. Install it, or name it in ESPALIER_CHROMIUM, to run the browser tests."));
    }
}
