package org.espalier.platform;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.zip.ZipFile;
import org.flywaydb.core.Flyway;
import org.postgresql.PGConnection;

/**
 * Fills an empty house from a backup file. All tables come in one transaction that is committed only when every hash
 * was right and every film is on the disk.
 */
final class Restore {

    /** Thrown when the file or the place it should go is not as it must be; nothing was changed. */
    static final class Refused extends IOException {
        private static final long serialVersionUID = 1;

        Refused(String reason) {
            super(reason);
        }
    }

    private final DatabaseSettings settings;
    private final Blobs blobs;

    Restore(DatabaseSettings settings, Blobs blobs) {
        this.settings = settings;
        this.blobs = blobs;
    }

    void read(Path file, PrintStream progress) throws IOException, SQLException {
        try (var zip = new ZipFile(file.toFile())) {
            var list = list(zip);
            migrate(list.version());
            try (var connection = DriverManager.getConnection(
                    settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER))) {
                connection.setAutoCommit(false);
                int tables = readTables(zip, list, connection);
                int films = readFilms(zip, list);
                connection.commit();
                progress.printf("%d tables and %d films restored, every hash right.%n", tables, films);
            }
        }
    }

    private void migrate(String version) throws SQLException, Refused {
        var flyway = Flyway.configure()
                .dataSource(settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER))
                .schemas("espalier")
                .locations("classpath:db/migration")
                .target(version)
                .load();
        if (flyway.info().applied().length > 0 && !isEmpty()) {
            throw new Refused("The database there is not empty. Restore into a new one.");
        }
        flyway.migrate();
    }

    private boolean isEmpty() throws SQLException {
        try (var connection = DriverManager.getConnection(
                        settings.url(), DatabaseRole.OWNER.user(), settings.password(DatabaseRole.OWNER));
                var statement = connection.createStatement();
                var rows = statement.executeQuery("select not exists (select from espalier.staff)")) {
            return rows.next() && rows.getBoolean(1);
        }
    }

    private static int readTables(ZipFile zip, Listed list, Connection connection) throws IOException, SQLException {
        var tables = Tables.inOrderOfReference(connection);
        var copy = connection.unwrap(PGConnection.class).getCopyAPI();
        for (var table : tables.reversed()) {
            try (var statement = connection.createStatement()) {
                statement.execute("delete from espalier.\"" + table.name() + '"');
            }
        }
        for (var table : tables) {
            var entry = BackupFile.tableEntry(table);
            checked(zip, list, entry, in -> copy.copyIn(table.copyIn(), in));
        }
        return tables.size();
    }

    private int readFilms(ZipFile zip, Listed list) throws IOException, SQLException {
        int count = 0;
        for (var entry : list.hashes().keySet()) {
            if (BackupFile.filmHash(entry).isPresent()) {
                checked(zip, list, entry, in -> blobs.put(in, Long.MAX_VALUE));
                count++;
            }
        }
        return count;
    }

    private static void checked(ZipFile zip, Listed list, String name, Reader reader) throws IOException, SQLException {
        var entry = zip.getEntry(name);
        if (entry == null) {
            throw new Refused("The backup file lacks " + name + ". Take another backup file.");
        }
        var digest = Hashes.sha256();
        try (var in = new DigestInputStream(zip.getInputStream(entry), digest)) {
            reader.read(in);
            in.transferTo(OutputStream.nullOutputStream());
        }
        if (!HexFormat.of().formatHex(digest.digest()).equals(list.hashes().get(name))) {
            throw new Refused("The backup file is damaged: " + name + " is not what was written. Take another one.");
        }
    }

    private static Listed list(ZipFile zip) throws IOException {
        var entry = zip.getEntry(BackupFile.LIST);
        if (entry == null) {
            throw new Refused("This is no whole backup file: its list of hashes is missing.");
        }
        var text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        var hashes = new HashMap<String, String>();
        text.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
            var parts = line.split("  ", 2);
            hashes.put(parts[1], parts[0]);
        });
        var version = text.lines().findFirst().flatMap(BackupFile::schemaVersion);
        return new Listed(
                version.orElseThrow(() -> new Refused("The backup file does not say its schema version.")), hashes);
    }

    private record Listed(String version, Map<String, String> hashes) {}

    private interface Reader {
        void read(InputStream in) throws IOException, SQLException;
    }
}
