package org.espalier.reading;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.awaitility.Awaitility;
import org.espalier.DoomedProcess;
import org.espalier.TestNetwork;
import org.espalier.film.FilmReceived;
import org.espalier.film.TestDoor;
import org.espalier.film.TestFilm;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;

/**
 * The whole application in a process of its own, which tells what it finds, does one thing, says what it acknowledged,
 * and dies at a named point as a killed process does: at once, without any farewell.
 */
public final class DoomedHouse {

    /** Where it dies. */
    enum Death {
        FILM_NOT_YET_COMMITTED,
        FILM_COMMITTED_NOT_YET_ANSWERED,
        PICTURE_HALF_WRITTEN,
        READING_NOT_YET_COMMITTED,
        READING_COMMITTED_NOT_YET_ANSWERED,
        NOWHERE
    }

    private static final int SMALL = 200;
    private static final int LARGE = 3000;

    private final Path folder;
    private final PrintStream said;
    private final ConfigurableApplicationContext house;
    private final TestDoor.Sender surgeon;

    private DoomedHouse(Path folder, PrintStream said, ConfigurableApplicationContext house) throws IOException {
        this.folder = folder;
        this.said = said;
        this.house = house;
        surgeon = surgeon();
    }

    public static void main(String[] arguments) throws IOException {
        var death = Death.valueOf(arguments[1]);
        DoomedProcess.live(
                arguments, new Scythe(death), (house, said) -> new DoomedHouse(Path.of(arguments[0]), said, house)
                        .live(death));
    }

    private void live(Death death) throws IOException {
        tellWhatIsThere();
        switch (death) {
            case FILM_NOT_YET_COMMITTED, FILM_COMMITTED_NOT_YET_ANSWERED -> send("first", SMALL);
            case PICTURE_HALF_WRITTEN -> {
                dieWhileAPictureGrows();
                send("second", LARGE);
                waitForDeath();
            }
            case READING_NOT_YET_COMMITTED -> {
                draw();
                sign();
            }
            case READING_COMMITTED_NOT_YET_ANSWERED, NOWHERE -> sign();
        }
    }

    /** Every film, once nothing is being decoded any more, every draft and every reading. */
    private void tellWhatIsThere() {
        var owner = house.getBean(TestNetwork.class).owner();
        Awaitility.await().atMost(Duration.ofSeconds(90)).until(() -> owner.sql(
                        "select not exists (select from film where state = 'RECEIVED')")
                .query(Boolean.class)
                .single());
        tell(owner, "select 'film ' || id || ' ' || state from film order by id");
        tell(owner, "select 'draft of ' || jsonb_array_length(content -> 'marks' -> 'points') from draft");
        tell(owner, "select 'reading ' || id from reading order by id");
        tell(owner, "select 'numbers ' || (count(*) > 0) from reading_number having count(*) > 0");
        tell(owner, "select 'waiting ' || count(*) from scheduled_tasks where task_name = 'film-decoding'");
    }

    private void tell(JdbcClient owner, String query) {
        owner.sql(query).query(String.class).list().forEach(said::println);
    }

    private void send(String name, int size) throws IOException {
        var kept = folder.resolve(name + ".dcm");
        if (!Files.exists(kept)) {
            Files.write(
                    kept,
                    TestFilm.of(size, size).text(0x00181164, "DS", "0.2\\0.2").bytes());
        }
        var received = house.getBean(TestDoor.class).send(surgeon, kept);
        said.println("acknowledged film " + TestDoor.taken(received).value());
    }

    private void draw() {
        var reader = house.getBean(TestReader.class);
        var child = reader.child(surgeon, LocalDate.of(2018, 3, 14));
        var film = reader.film(surgeon, child, LocalDate.of(2024, 3, 14));
        var drafts = house.getBean(DraftService.class);
        surgeon.does(() -> {
            var draft = drafts.begin(film);
            return drafts.measure(draft.id(), TestReader.commit(draft.revision(), TestReader.bothLimbs()));
        });
        said.println("acknowledged draft");
    }

    /** Signs the one draft there is, or signs again what was signed from it. */
    private void sign() {
        var owner = house.getBean(TestNetwork.class).owner();
        var draft = owner.sql("""
                        select id, revision from draft
                        union all
                        select id, 0 from reading
                        """)
                .query((row, number) -> new Unsigned(new ReadingId(row.getObject(1, UUID.class)), row.getLong(2)))
                .single();
        var readings = house.getBean(ReadingService.class);
        var outcome = surgeon.does(() -> readings.sign(draft.id(), draft.revision(), null));
        said.println("acknowledged " + outcome);
    }

    private record Unsigned(ReadingId id, long revision) {}

    /** The same surgeon in each life of the house. */
    private TestDoor.Sender surgeon() throws IOException {
        var card = folder.resolve("surgeon");
        if (!Files.exists(card)) {
            var made = house.getBean(TestReader.class).surgeon();
            Files.writeString(card, made.staff() + " " + made.site().value());
        }
        var words = Files.readString(card).split(" ");
        return new TestDoor.Sender(
                UUID.fromString(words[0]), new org.espalier.access.SiteId(UUID.fromString(words[1])));
    }

    private static void waitForDeath() {
        try {
            new CountDownLatch(1).await(60, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void dieWhileAPictureGrows() {
        var pictures = folder.resolve("data").resolve("pyramids");
        Thread.ofPlatform().daemon().start(() -> {
            while (!holdsAHalfWrittenPicture(pictures)) {
                Thread.onSpinWait();
            }
            DoomedProcess.die();
        });
    }

    private static boolean holdsAHalfWrittenPicture(Path pictures) {
        if (!Files.exists(pictures)) {
            return false;
        }
        try (Stream<Path> files = Files.walk(pictures)) {
            return files.anyMatch(file -> file.getFileName().toString().matches("[^.]*\\..*-.*-.*-.*"));
        } catch (IOException | UncheckedIOException e) {
            return false;
        }
    }

    /** Cuts at the point it was made for. */
    record Scythe(Death death) {

        @EventListener
        void beforeFilmCommits(FilmReceived film) {
            dieAt(Death.FILM_NOT_YET_COMMITTED);
        }

        @TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
        public void afterFilmCommitted(FilmReceived film) {
            dieAt(Death.FILM_COMMITTED_NOT_YET_ANSWERED);
        }

        @EventListener
        void beforeReadingCommits(ReadingSigned reading) {
            dieAt(Death.READING_NOT_YET_COMMITTED);
        }

        @TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
        public void afterReadingCommitted(ReadingSigned reading) {
            dieAt(Death.READING_COMMITTED_NOT_YET_ANSWERED);
        }

        private void dieAt(Death point) {
            if (death == point) {
                DoomedProcess.die();
            }
        }
    }
}
