package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.Browser.button;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.espalier.Browser;
import org.espalier.Browser.Person;
import org.espalier.Browser.Screen;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.StaffId;
import org.espalier.film.TestDoor.Sender;
import org.espalier.film.TestPictures;
import org.espalier.kit.DateText;
import org.espalier.kit.Texts;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.reading.MeasureRequest;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Sex;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** A case from the question at one hospital to the decision, answered at two others, who are then shut out. */
@IntegrationTest
class OpinionStoryBrowserTests {

    private static final String NAME = "Silberdistel";
    private static final String NUMBER = "SD-90417";
    private static final LocalDate BORN = LocalDate.of(2018, 3, 14);

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    PatientService patients;

    @Autowired
    OpinionService opinions;

    @Autowired
    OpinionFilmService films;

    @Autowired
    TestPictures pictures;

    @Autowired
    Ids ids;

    private void signIn(Person person, Sender who) {
        person.signIn(network, who.staff());
    }

    private Colleague colleague(Sender who) {
        return network.owner()
                .sql("select s.name, h.name from staff s, site h where s.id = ? and h.id = ?")
                .params(who.staff(), who.site().value())
                .query((row, number) -> new Colleague(new StaffId(who.staff()), row.getString(1), row.getString(2)))
                .single();
    }

    private static void press(Person person, String key, Object... arguments) {
        button(person.page(), Texts.text(key, arguments)).first().click();
        person.settle();
    }

    private static Locator field(Person person, String key) {
        return person.page().getByLabel(Texts.text(key), new Page.GetByLabelOptions().setExact(true));
    }

    private ChildId child(Sender surgeon) {
        var child = new ChildId(ids.next());
        surgeon.does(() ->
                patients.register(surgeon.site(), child, new ChildData(NAME, "Amalia", BORN, Sex.FEMALE, NUMBER)));
        return child;
    }

    /** Types a colleague into a list of many, and takes the one that is left. */
    private static void choose(Person person, Colleague colleague) {
        var named = Texts.text("opinion.colleague", colleague.name(), colleague.hospital());
        var box = field(person, "opinion.colleagues").first();
        box.click();
        box.fill(named);
        person.page()
                .getByRole(
                        AriaRole.OPTION,
                        new Page.GetByRoleOptions().setName(named).setExact(true))
                .click();
        person.page()
                .locator("vaadin-multi-select-combo-box-chip")
                .filter(new Locator.FilterOptions().setHasText(named))
                .first()
                .waitFor();
        person.page().keyboard().press("Escape");
        person.settle();
    }

    private static void select(Person person, String key, String option) {
        person.choose(field(person, key), option);
    }

    private static void pressOnFilm(Person person, double x, double y) {
        var box = person.page().locator("opinion-film .film").first().boundingBox();
        person.page().mouse().click(box.x + box.width * x, box.y + box.height * y);
        person.page().waitForTimeout(350);
        person.settle();
    }

    @Test
    void askedAnsweredAndClosed() throws IOException {
        var a = reader.surgeon();
        var b = reader.surgeon();
        var c = reader.surgeon();
        var child = child(a);
        var film = reader.film(a, child, LocalDate.of(2024, 3, 14));
        reader.signed(a, film);
        pictures.kept(a, child, LocalDate.of(2024, 5, 6), legs());
        try (var asker = Browser.person(port, Screen.DESKTOP);
                var first = Browser.person(port, Screen.DESKTOP, whoTheChildIs());
                var second = Browser.person(port, Screen.PHONE, whoTheChildIs())) {
            signIn(asker, a);
            pictures.kept(a, child, LocalDate.of(2024, 5, 6), recorded(asker));
            var panel = panel(asker, colleague(c));
            var thread = ask(asker, child, colleague(b), panel);
            answer(first, b);
            reads(first, b, thread);
            advises(second, c, thread);
            asker.page().getByText("The physis looks open.").first().waitFor();
            asker.picture("opinion-thread-asker-desktop").assertAccessible().assertFits();
            whole(asker, "opinion-thread-whole-desktop");
            close(asker, child, thread);
            second.page().getByText(Texts.text("opinion.not-there")).first().waitFor();
            lockedOut(second, thread);
        }
    }

    private static String[] whoTheChildIs() {
        return new String[] {NAME, NUMBER, "Amalia", BORN.toString(), DateText.typed(BORN), DateText.of(BORN)};
    }

    /** A clip that the browser itself made. */
    private static byte[] recorded(Person person) {
        return Base64.getDecoder().decode((String) person.page().evaluate(TestPictures.RECORD));
    }

    /** Two legs, and a face that must be covered. */
    private static byte[] legs() throws IOException {
        var image = new BufferedImage(600, 900, BufferedImage.TYPE_INT_RGB);
        var pen = image.createGraphics();
        pen.setColor(new Color(0xE8DFCF));
        pen.fillRect(0, 0, 600, 900);
        pen.setColor(new Color(0xB98B6A));
        pen.fillOval(240, 40, 120, 150);
        pen.fillRoundRect(180, 420, 90, 440, 60, 60);
        pen.fillRoundRect(330, 420, 90, 440, 60, 60);
        pen.dispose();
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(image, "jpeg", bytes);
        return bytes.toByteArray();
    }

    /** A named group of one, made on its page; how it is named where it is chosen. */
    private String panel(Person asker, Colleague member) {
        var name = "Bowed legs " + ids.next();
        asker.open(Urls.OPINION_PANELS);
        field(asker, "opinion.panel.name").fill(name);
        choose(asker, member);
        press(asker, "opinion.panel.make");
        asker.page()
                .getByRole(AriaRole.HEADING, new Page.GetByRoleOptions().setName(name))
                .waitFor();
        asker.picture("opinion-panels-desktop").assertAccessible().assertFits();
        return Texts.text("opinion.panel.of", name, member.name());
    }

    private ThreadId ask(Person asker, ChildId child, Colleague colleague, String panel) {
        asker.open(Urls.childOpinions(child.value()));
        asker.picture("opinion-child-desktop").assertAccessible();
        asker.page().getByText(Texts.text("opinion.ask")).click();
        asker.settle();
        field(asker, "opinion.question").fill("Plate the lateral proximal tibia now, or watch half a year?");
        asker.page().getByText(Texts.of(Advice.PLATE)).first().click();
        field(asker, "opinion.consent").fill("mother, in clinic");
        choose(asker, colleague);
        select(asker, "opinion.panel", panel);
        asker.page().locator(".film-pick vaadin-checkbox").first().click();
        asker.settle();
        press(asker, "opinion.cover");
        asker.page().locator("opinion-film[data-tiles=settled]").waitFor();
        asker.page()
                .locator("opinion-film")
                .getByText(Texts.text("opinion.film.cover"))
                .click();
        pressOnFilm(asker, 0.45, 0.2);
        pressOnFilm(asker, 0.6, 0.4);
        asker.page()
                .getByText(Texts.text("opinion.film.covered").replace("{0}", "1"))
                .waitFor();
        asker.page().getByText(Texts.text("opinion.checked")).click();
        asker.settle();
        chooseClip(asker);
        choosePhoto(asker);
        asker.page().locator(".fact-pick vaadin-checkbox").last().click();
        asker.settle();
        asker.picture("opinion-ask-desktop").assertAccessible().assertFits();
        whole(asker, "opinion-ask-whole-desktop");
        asker.page().reload();
        asker.settle();
        assertThat(field(asker, "opinion.question").inputValue()).startsWith("Plate the lateral");
        assertThat(field(asker, "opinion.panel").inputValue()).isEqualTo(panel);
        press(asker, "opinion.send");
        asker.page().waitForURL(url -> url.contains("/opinion/"));
        asker.page().locator("opinion-film[data-tiles=settled]").waitFor();
        var url = asker.page().url();
        return new ThreadId(UUID.fromString(url.substring(url.lastIndexOf('/') + 1)));
    }

    /** Nothing can be said of a clip before it was played to its end. */
    private static void chooseClip(Person asker) {
        asker.page().getByText("Clip of ").click();
        asker.settle();
        var assured = asker.page().getByLabel(Texts.text("opinion.checked.clip"));
        assertThat(assured.isDisabled()).isTrue();
        asker.page().locator("video").evaluate("video => video.play()");
        asker.page().waitForCondition(assured::isEnabled);
        assured.click();
        asker.settle();
    }

    private static void choosePhoto(Person asker) {
        asker.page().getByText("Photo of ").click();
        asker.settle();
        press(asker, "opinion.cover");
        var photo = asker.page().locator("opinion-film[data-tiles=settled]").nth(1);
        photo.waitFor();
        photo.getByText(Texts.text("opinion.film.cover")).click();
        var stage = photo.locator(".film").boundingBox();
        for (var corner : new double[][] {{0.4, 0.05}, {0.6, 0.25}}) {
            asker.page().mouse().click(stage.x + stage.width * corner[0], stage.y + stage.height * corner[1]);
            asker.page().waitForTimeout(350);
        }
        photo.getByText(Texts.text("opinion.film.covered").replace("{0}", "1")).waitFor();
        asker.picture("opinion-ask-photo-desktop");
        asker.page().getByText(Texts.text("opinion.checked.photo")).click();
        asker.settle();
    }

    private void answer(Person person, Sender b) {
        signIn(person, b);
        person.open(Urls.OPINIONS);
        person.picture("opinion-list-desktop").assertAccessible().assertFits();
        person.page().getByText("Plate the lateral proximal tibia now").first().click();
        person.page().locator("opinion-film[data-tiles=settled]").waitFor();
        button(person.page().locator("opinion-film"), Texts.text("opinion.film.line"))
                .click();
        person.page()
                .locator("opinion-film")
                .getByLabel(Texts.text("opinion.film.label"))
                .fill("joint line");
        pressOnFilm(person, 0.4, 0.3);
        pressOnFilm(person, 0.6, 0.5);
        person.page().locator("opinion-film li").getByText("joint line").waitFor();
        drawByKeys(person);
        person.page().locator(".clips video").scrollIntoViewIfNeeded();
        person.page().locator(".clips video").evaluate("video => video.play()");
        person.page().waitForFunction("() => document.querySelector('.clips video').ended");
        person.picture("opinion-clip-desktop");
        field(person, "opinion.message").fill("Was there a fever before it bowed?");
        select(person, "opinion.about", "Photo 1, month 1");
        press(person, "opinion.say");
        person.page()
                .getByText(Texts.text("opinion.about.film", "Photo 1, month 1"))
                .click();
        person.settle();
        person.page().getByText(Texts.text("opinion.photo.facts", 1)).waitFor();
        person.picture("opinion-thread-desktop").assertAccessible().assertFits();
    }

    /** An angle drawn without a mouse: the cross stays in the middle, and the film moves under it. */
    private static void drawByKeys(Person person) {
        var film = person.page().locator("opinion-film");
        button(film, Texts.text("opinion.film.angle")).press("Enter");
        film.getByLabel(Texts.text("opinion.film.label")).pressSequentially("slope");
        var stage = film.locator(".stage");
        stage.focus();
        stage.press("Enter");
        for (var way : List.of("ArrowDown", "ArrowRight")) {
            for (int i = 0; i < 6; i++) {
                stage.press(way);
            }
            person.page().waitForTimeout(350);
            stage.press("Enter");
        }
        film.locator("li").getByText("slope").waitFor();
        assertThat(film.locator("li").getByText("slope").innerText()).contains("90.0°");
        person.picture("opinion-keys-desktop");
    }

    private void reads(Person person, Sender b, ThreadId thread) {
        var film = b.does(() -> opinions.open(thread))
                .orElseThrow()
                .films()
                .getFirst()
                .id();
        person.open(Urls.readOpinionFilm(thread.value(), film));
        person.page().locator("film-room[data-tiles=settled]").waitFor();
        var draft = b.does(() -> films.read(thread, film)).orElseThrow();
        var marks = reader.movingHand();
        b.does(() -> films.measure(
                draft.id(), new MeasureRequest(1, draft.revision(), marks.points(), marks.edges(), true)));
        person.page().reload();
        person.page().locator("film-room[data-tiles=settled]").waitFor();
        person.picture("opinion-read-desktop").assertFits();
        person.page().locator("film-room footer button").last().click();
        person.page().waitForURL(url -> !url.contains("/film/"));
        person.page().getByText(Texts.text("opinion.readings.error")).waitFor();
        person.picture("opinion-compared-desktop");
    }

    private void advises(Person person, Sender c, ThreadId thread) {
        signIn(person, c);
        person.open(Urls.opinion(thread.value()));
        var film = person.page().locator("opinion-film[data-tiles=settled]");
        film.waitFor();
        film.evaluate("film => { const around = film.parentNode; film.remove(); around.append(film); }");
        film.locator("canvas").first().waitFor();
        select(person, "opinion.advice", Texts.of(Advice.PLATE));
        select(person, "opinion.sure", Texts.of(Sureness.FAIRLY_SURE));
        field(person, "opinion.where").fill("lateral, proximal tibia");
        field(person, "opinion.free-text").fill("The physis looks open.");
        person.settle();
        press(person, "opinion.give");
        person.page().getByText("The physis looks open.").first().waitFor();
        person.picture("opinion-thread-phone").assertAccessible().assertFits();
        whole(person, "opinion-thread-whole-phone");
    }

    private void close(Person asker, ChildId child, ThreadId thread) throws IOException {
        select(asker, "opinion.decided", Texts.of(Advice.PLATE));
        field(asker, "opinion.decided.text").fill("Lateral plate in spring.");
        field(asker, "opinion.decided.by").fill("Monday conference");
        asker.settle();
        press(asker, "opinion.close");
        asker.page().getByText(Texts.text("opinion.summary")).first().waitFor();
        whatCameOfIt(asker);
        asker.open(Urls.childOpinions(child.value()));
        asker.page().getByText(Texts.text("opinion.summary")).waitFor();
        var pdf = asker.page().context().request().get(address("api/opinions/" + thread.value() + "/summary"));
        assertThat(pdf.status()).isEqualTo(200);
        assertThat(new String(pdf.body(), 0, 4, java.nio.charset.StandardCharsets.US_ASCII))
                .isEqualTo("%PDF");
        Files.write(Path.of("target", "pictures", "opinion-summary.pdf"), pdf.body());
        asker.picture("opinion-closed-desktop").assertAccessible();
    }

    /** What is typed outlives a page that is left. */
    private static void whatCameOfIt(Person asker) {
        select(asker, "opinion.outcome.done", Texts.of(Advice.PLATE));
        select(asker, "opinion.outcome.result", Texts.of(Outcome.Result.BETTER));
        field(asker, "opinion.outcome.months").fill("12");
        field(asker, "opinion.outcome.text").fill("Moves as hoped.");
        asker.page().keyboard().press("Tab");
        asker.page().waitForTimeout(500);
        asker.settle();
        asker.page().reload();
        asker.settle();
        assertThat(field(asker, "opinion.outcome.text").inputValue()).isEqualTo("Moves as hoped.");
        press(asker, "opinion.outcome.keep");
        asker.page().getByText("Moves as hoped.").first().waitFor();
        assertThat(asker.page().locator(".opinion-outcomes").innerText())
                .contains("Plate; the limb better, 12 months after closing", "not known yet");
        asker.picture("opinion-outcome-desktop").assertAccessible().assertFits();
        whole(asker, "opinion-closed-whole-desktop");
    }

    /** All of a page, for a person to look at. */
    private static void whole(Person person, String name) {
        person.page()
                .screenshot(new Page.ScreenshotOptions()
                        .setFullPage(true)
                        .setPath(Path.of("target", "pictures", name + ".png")));
    }

    private void lockedOut(Person second, ThreadId thread) {
        var film = shown("opinion_film", thread);
        var clip = shown("opinion_clip", thread);
        assertThat(second.page()
                        .context()
                        .request()
                        .get(address("api/opinions/" + thread.value() + "/clips/" + clip))
                        .status())
                .isEqualTo(404);
        for (var path : new String[] {"info", "rendered", "thumbnail", "dicom"}) {
            var answer = second.page()
                    .context()
                    .request()
                    .get(address("api/opinions/" + thread.value() + "/films/" + film + "/" + path));
            assertThat(answer.status()).as(path).isEqualTo(404);
        }
        assertThat(second.page()
                        .context()
                        .request()
                        .get(address("api/opinions/" + thread.value() + "/summary"))
                        .status())
                .isEqualTo(404);
        second.open(Urls.opinion(thread.value()));
        second.page().getByText(Texts.text("opinion.not-there")).first().waitFor();
        second.picture("opinion-ended-phone").assertAccessible();
        second.open(Urls.OPINIONS);
        field(second, "opinion.search").fill("fever");
        second.page().getByText(Texts.text("opinion.found", 0)).waitFor();
        second.page().getByText("The physis looks open.").waitFor();
        second.page().getByText(Texts.text("opinion.fared.private")).waitFor();
        second.picture("opinion-list-phone").assertAccessible().assertFits();
        whole(second, "opinion-list-whole-phone");
    }

    private UUID shown(String table, ThreadId thread) {
        return network.owner()
                .sql("select id from " + table + " where thread_id = ? limit 1")
                .param(thread.value())
                .query(UUID.class)
                .single();
    }

    private String address(String path) {
        return "http://localhost:" + port + "/" + path;
    }
}
