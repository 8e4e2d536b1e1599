package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.concurrent.TimeUnit;
import org.espalier.Program;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EmbeddedDatabaseIntegrationTests {

    @TempDir
    Path folder;

    @Test
    void asksForAPasswordEvenOfTheSuperuser() throws Exception {
        try (var database = EmbeddedDatabase.start(new DataFolder(folder), true)) {
            assertThatThrownBy(() ->
                            DriverManager.getConnection(database.settings().url(), "postgres", ""))
                    .isInstanceOf(SQLException.class);
        }
    }

    @Test
    void waitsForTheDisk() throws Exception {
        try (var database = EmbeddedDatabase.start(new DataFolder(folder), true)) {
            assertThat(show(database.settings(), "fsync")).isEqualTo("on");
            assertThat(show(database.settings(), "synchronous_commit")).isEqualTo("on");
        }
    }

    @Test
    void keepsItsPasswordsWhereOnlyTheOwnerReads() throws Exception {
        EmbeddedDatabase.start(new DataFolder(folder), false).close();
        var permissions = Files.getPosixFilePermissions(folder.resolve("database.secrets"));
        assertThat(PosixFilePermissions.toString(permissions)).isEqualTo("rw-------");
    }

    @Test
    void startsAgainByItselfAfterItsProgramWasKilled() throws Exception {
        var killed = Program.of(KilledHouse.class, folder.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("output").toFile())
                .start();
        assertThat(killed.waitFor(120, TimeUnit.SECONDS)).isTrue();
        assertThat(EmbeddedDatabase.running(new DataFolder(folder)))
                .as("the server outlived its program")
                .isPresent();
        try (var database = EmbeddedDatabase.start(new DataFolder(folder), true);
                var connection = KilledHouse.connect(database.settings());
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select word from acknowledged")) {
            assertThat(rows.next()).isTrue();
            assertThat(rows.getString(1)).isEqualTo("kept");
        }
    }

    @Test
    void refusesASecondProgramOnTheSameFolder() throws Exception {
        try (var first = EmbeddedDatabase.start(new DataFolder(folder), false)) {
            assertThatThrownBy(() -> EmbeddedDatabase.start(new DataFolder(folder), false))
                    .hasMessageContaining("running already");
            assertThat(show(first.settings(), "fsync")).isEqualTo("off");
        }
    }

    @Test
    void forgetsAFolderOnlyWhenNoProgramUsesIt() throws Exception {
        var data = new DataFolder(folder.resolve("data"));
        try (var database = EmbeddedDatabase.start(data, false)) {
            assertThatThrownBy(data::forget).hasMessageContaining("running already");
        }
        data.forget();
        assertThat(data.root()).doesNotExist();
    }

    private static String show(DatabaseSettings settings, String name) throws SQLException {
        try (var connection = KilledHouse.connect(settings);
                var statement = connection.createStatement();
                var rows = statement.executeQuery("show " + name)) {
            rows.next();
            return rows.getString(1);
        }
    }
}
