package org.espalier.opinion;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestScreens;
import org.espalier.TestSession;
import org.espalier.TestWorld;
import org.espalier.access.SiteService;
import org.espalier.access.StaffId;
import org.espalier.film.FilmFixtures;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.TestClips;
import org.espalier.film.TestDoor;
import org.espalier.film.TestDoor.Sender;
import org.espalier.film.TestFilm;
import org.espalier.film.TestPictures;
import org.espalier.kit.DateText;
import org.espalier.kit.Urls;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.plan.ComparisonId;
import org.espalier.plan.Intent;
import org.espalier.plan.Option;
import org.espalier.plan.PlanService;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

/** What a colleague can fetch, byte by byte: pages, pictures, files, headers. Log lines are watched by the canaries. */
@IntegrationTest
class DeidentificationIntegrationTests {

    private static final LocalDate DAY = LocalDate.of(2025, 5, 6);

    private static final LocalDate BORN = LocalDate.of(2016, 5, 20);

    private static final List<String> OF_THE_CHILD = List.of(
            "Zaunkoenig",
            "Quirina",
            "7731",
            "2016-05-20",
            "20160520",
            "20 May 2016",
            DateText.typed(BORN),
            DateText.of(BORN),
            DateText.inWords(BORN));

    @LocalServerPort
    int port;

    @Autowired
    TestNetwork network;

    @Autowired
    TestReader reader;

    @Autowired
    TestDoor door;

    @Autowired
    TestOpinion world;

    @Autowired
    PatientService patients;

    @Autowired
    FilmService films;

    @Autowired
    OpinionService opinions;

    @Autowired
    ClosingService closings;

    @Autowired
    TestPictures pictures;

    @Autowired
    PlanService plans;

    @Autowired
    SiteService sites;

    @Autowired
    Ids ids;

    private ChildId child(Sender asker) {
        var child = new ChildId(ids.next());
        asker.does(() -> patients.register(asker.site(), child, TestWorld.CHILD));
        return child;
    }

    private FilmId film(Sender asker, ChildId child, byte[] bytes) {
        var film = door.settled(asker, TestDoor.taken(door.send(asker, bytes, "Zaunkoenig.dcm")));
        if (film.child().isEmpty()) {
            asker.does(() -> films.assign(film.id(), film.version(), child, LocalDate.of(2024, 3, 14), null));
        }
        return film.id();
    }

    /** Everything a colleague is sent about a thread: each answer with its headers, and what the screen says. */
    private List<String> fetched(Sender colleague, ThreadId thread) {
        var session =
                new TestSession(port).signIn(network.login(colleague.staff()), network.password(colleague.staff()));
        var sent = new ArrayList<String>();
        for (var film :
                colleague.does(() -> opinions.open(thread)).orElseThrow().films()) {
            for (var what : List.of("info", "rendered", "thumbnail", "dicom")) {
                var answer = session.bytes("api/opinions/" + thread.value() + "/films/" + film.id() + "/" + what);
                assertThat(answer.statusCode()).as(what).isEqualTo(200);
                sent.add(answer.headers().map() + new String(answer.body(), StandardCharsets.ISO_8859_1));
            }
        }
        for (var clip :
                colleague.does(() -> opinions.open(thread)).orElseThrow().clips()) {
            var answer = session.bytes("api/opinions/" + thread.value() + "/clips/" + clip.id());
            assertThat(answer.statusCode()).isEqualTo(200);
            sent.add(answer.headers().map() + new String(answer.body(), StandardCharsets.ISO_8859_1));
        }
        var screens = new TestScreens(session);
        sent.add(screens.open(Urls.opinion(thread.value())));
        sent.add(screens.open(Urls.OPINIONS));
        return sent;
    }

    private static void assertNothingOf(List<String> words, List<String> sent) {
        assertThat(sent).hasSizeGreaterThan(4).allSatisfy(answer -> {
            var small = answer.toLowerCase(Locale.ROOT);
            assertThat(words).noneMatch(word -> small.contains(word.toLowerCase(Locale.ROOT)));
        });
    }

    @Test
    void nothingOfTheChildIsInAnythingAColleagueCanFetch() throws IOException {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var original = TestFilm.of(400, 300)
                .of("CANARY-7731", "20160520")
                .text(0x00080080, "LO", "Zaunkoenig ward")
                .text(0x00100010, "PN", "Zaunkoenig^Quirina")
                .text(0x60000022, "LO", "Quirina overlay");
        var film = film(asker, child, original.bytes());
        reader.signed(asker, film);
        var shot = photo();
        var seen = List.of(
                pictures.kept(asker, child, DAY, shot),
                pictures.kept(asker, child, DAY, TestClips.mp4("Quirina Zaunkoenig")),
                pictures.kept(asker, child, DAY, TestClips.webm("Quirina Zaunkoenig")));
        compared(asker, child);
        var thread = world.asked(asker, child, List.of(film), colleague);
        var open = colleague.does(() -> opinions.open(thread)).orElseThrow();
        assertThat(open.films()).extracting(ShownFilm::photo).containsExactly(false, true);
        assertThat(open.clips()).hasSize(2);
        assertThat(open.facts())
                .filteredOn(fact -> fact.kind() == FactKind.COMPARISON)
                .singleElement()
                .satisfies(fact -> assertThat(fact.sheet().lines().toString())
                        .contains("left out: it names the child", "left out: it holds a day", "month 33")
                        .doesNotContain(DateText.of(asker.does(() -> sites.today(asker.site())))));
        asker.does(() -> opinions.say(thread, ids.next(), "It grew worse.", Optional.empty()));
        var words = new ArrayList<>(OF_THE_CHILD);
        words.addAll(List.of(
                child.value().toString(),
                film.value().toString(),
                original.uid(0x00080018),
                "2024-03-14",
                DateText.typed(LocalDate.of(2024, 3, 14)),
                DateText.of(LocalDate.of(2024, 3, 14)),
                DAY.toString(),
                DateText.typed(DAY),
                DateText.of(DAY),
                "Canary Street",
                "3 March 2027"));
        seen.forEach(picture -> words.add(picture.value().toString()));
        assertNothingOf(words, fetched(colleague, thread));
    }

    /** A JPEG part begins with FF E1 and its length; a camera writes place and person there. */
    private static byte[] photo() throws IOException {
        var bytes = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(60, 80, BufferedImage.TYPE_INT_RGB), "jpeg", bytes);
        var plain = bytes.toByteArray();
        var beside = "Exif\0\0Canary Street 7, Quirina Zaunkoenig".getBytes(StandardCharsets.ISO_8859_1);
        var shot = new ByteArrayOutputStream();
        shot.write(plain, 0, 2);
        shot.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (beside.length + 2)});
        shot.writeBytes(beside);
        shot.write(plain, 2, plain.length - 2);
        return shot.toByteArray();
    }

    /** A comparison kept with words that name the child and with days. */
    private void compared(Sender asker, ChildId child) {
        var intent = new Intent(
                Option.WATCH,
                "Quirina stands straight",
                "seen again 3 March 2027",
                new Angle(1),
                LocalDate.of(2027, 1, 2));
        asker.does(() -> {
            plans.keep(child, Side.RIGHT, new ComparisonId(ids.next()), intent);
            return child;
        });
    }

    /** The summary stays in the record; it bears no more than the thread does. */
    @Test
    void nothingOfTheChildIsInTheSummary() throws Exception {
        var asker = reader.surgeon();
        var child = child(asker);
        var film = film(asker, child, TestFilm.of(60, 80).bytes());
        pictures.kept(asker, child, DAY, TestClips.mp4("Quirina"));
        var thread = world.asked(asker, child, List.of(film), reader.surgeon());
        asker.does(() -> closings.close(thread, Advice.PLATE, "Plated in spring.", "the team"));
        var summary = asker.does(() -> closings.summary(thread)).orElseThrow();
        try (var pdf = Loader.loadPDF(summary)) {
            var told = new ArrayList<>(List.of(
                    new PDFTextStripper().getText(pdf),
                    pdf.getDocumentInformation().toString()));
            for (var object : pdf.getDocument().getXrefTable().keySet()) {
                told.add(String.valueOf(
                        pdf.getDocument().getObjectFromPool(object).getObject()));
            }
            var metadata = pdf.getDocumentCatalog().getMetadata();
            told.add(metadata == null ? "" : new String(metadata.toByteArray(), StandardCharsets.UTF_8));
            told.add(new String(summary, StandardCharsets.ISO_8859_1));
            assertThat(told.getFirst()).contains("Clip 1");
            var words = new ArrayList<>(OF_THE_CHILD);
            words.addAll(List.of(
                    child.value().toString(),
                    film.value().toString(),
                    thread.value().toString()));
            assertNothingOf(words, told);
        }
    }

    @Test
    void nothingOfARealFilmIsInAnythingAColleagueCanFetch() throws Exception {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var file = FilmFixtures.file("dicom/films/cr-tiny-mono1-ips.dcm");
        var thread = world.asked(asker, child, List.of(film(asker, child, Files.readAllBytes(file))), colleague);
        var words = new ArrayList<>(OF_THE_CHILD);
        words.addAll(List.of("Archibald", "77654033", "Agfa", "dcanon", "1196527414", "C Spine"));
        assertNothingOf(words, fetched(colleague, thread));
    }

    @Test
    void anOldAddressOpensNothingOnceTheGrantEnded() {
        var asker = reader.surgeon();
        var colleague = reader.surgeon();
        var child = child(asker);
        var film = film(asker, child, TestFilm.of(60, 80).bytes());
        pictures.kept(asker, child, DAY, TestClips.webm("Quirina"));
        var thread = world.asked(asker, child, List.of(film), colleague);
        UUID shown = world.film(colleague, thread);
        UUID clip = world.clip(colleague, thread);
        asker.does(() -> opinions.withdraw(thread, new StaffId(colleague.staff())));
        var session =
                new TestSession(port).signIn(network.login(colleague.staff()), network.password(colleague.staff()));
        for (var what : List.of("info", "rendered", "thumbnail", "dicom")) {
            assertThat(session.get("api/opinions/" + thread.value() + "/films/" + shown + "/" + what)
                            .statusCode())
                    .as(what)
                    .isEqualTo(404);
        }
        assertThat(session.get("api/opinions/" + thread.value() + "/clips/" + clip)
                        .statusCode())
                .isEqualTo(404);
        assertThat(new TestScreens(session).open(Urls.opinion(thread.value()))).doesNotContain(TestOpinion.QUESTION);
    }
}
