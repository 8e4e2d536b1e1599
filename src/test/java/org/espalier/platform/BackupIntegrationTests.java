package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The drill: a house is filled, written into a file, and built again from it elsewhere. */
class BackupIntegrationTests {

    private static final byte[] FILM = "a film".getBytes(StandardCharsets.UTF_8);

    @TempDir
    static Path folder;

    private static Path backup;
    private static BlobRef film;

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final PrintStream print = new PrintStream(said, true, StandardCharsets.UTF_8);

    @BeforeAll
    static void fillAHouseAndBackItUp() throws Exception {
        var house = folder.resolve("house");
        backup = folder.resolve("house.backup");
        try (var database = EmbeddedDatabase.start(new DataFolder(house), false)) {
            migrate(database.settings());
            execute(
                    database.settings(),
                    "insert into espalier.site values ('%s', 'ALDER', 'Alder hospital', 'Europe/Lisbon')"
                            .formatted(UUID.randomUUID()),
                    "insert into espalier.staff values ('%s', 'someone', 'Some One', 'person', true)"
                            .formatted(UUID.randomUUID()),
                    """
                    insert into espalier.membership
                    select staff.id, site.id, 'NURSE', '[2020-01-01,)' from espalier.staff, espalier.site
                    """);
            film = new Blobs(new DataFolder(house).films(), Clock.systemUTC()).put(new ByteArrayInputStream(FILM), 100);
            var status =
                    BackupCommand.run(List.of(backup.toString(), "--data", house.toString()), System.out, System.err);
            assertThat(status).isZero();
        }
    }

    @Test
    void givesEveryRowAndEveryFilmBack() throws Exception {
        var again = folder.resolve("again");
        assertThat(restore(backup, again)).isZero();
        try (var database = EmbeddedDatabase.start(new DataFolder(again), false)) {
            assertThat(rows(database.settings(), "select code || ' ' || name from espalier.site"))
                    .containsExactly("ALDER Alder hospital");
            assertThat(rows(database.settings(), "select role || ' ' || valid from espalier.membership"))
                    .containsExactly("NURSE [2020-01-01,)");
        }
        assertThat(new Blobs(new DataFolder(again).films(), Clock.systemUTC()).open(film))
                .hasBinaryContent(FILM);
    }

    @Test
    void refusesADamagedFileAndLeavesTheDatabaseEmpty() throws Exception {
        var damaged = folder.resolve("damaged.backup");
        BackupDamage.changeOneFilm(backup, damaged);
        var target = folder.resolve("not-filled");
        assertThat(restore(damaged, target)).isEqualTo(1);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("damaged");
        try (var database = EmbeddedDatabase.start(new DataFolder(target), false)) {
            assertThat(rows(database.settings(), "select code from espalier.site"))
                    .isEmpty();
        }
    }

    @Test
    void refusesToFillAHouseThatIsNotEmpty() {
        var target = folder.resolve("filled-once");
        assertThat(restore(backup, target)).isZero();
        assertThat(restore(backup, target)).isEqualTo(1);
        assertThat(said.toString(StandardCharsets.UTF_8)).contains("not empty");
    }

    @Test
    void keepsAnEarlierBackupFile() throws IOException {
        var before = Files.readAllBytes(backup);
        assertThat(BackupCommand.run(List.of(backup.toString(), "--data", folder.toString()), print, print))
                .isEqualTo(2);
        assertThat(backup).hasBinaryContent(before);
    }

    private int restore(Path file, Path target) {
        return RestoreCommand.run(List.of(file.toString(), "--data", target.toString()), print, print);
    }

    private static void migrate(DatabaseSettings settings) {
        Flyway.configure()
                .dataSource(settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER))
                .schemas("espalier")
                .locations("classpath:db/migration")
                .load()
                .migrate();
    }

    private static void execute(DatabaseSettings settings, String... statements) throws Exception {
        try (var connection = DriverManager.getConnection(
                        settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER));
                var statement = connection.createStatement()) {
            for (var sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private static List<String> rows(DatabaseSettings settings, String query) throws Exception {
        var rows = new ArrayList<String>();
        try (var connection = DriverManager.getConnection(
                        settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER));
                var statement = connection.createStatement();
                var found = statement.executeQuery(query)) {
            while (found.next()) {
                rows.add(found.getString(1));
            }
        }
        return rows;
    }
}
