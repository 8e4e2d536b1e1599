package org.espalier.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import org.springframework.util.FileSystemUtils;

/**
 * PostgreSQL run by the house itself in its data folder: password-protected, durable, and able to start again after the
 * program that ran it was killed.
 */
record EmbeddedDatabase(EmbeddedPostgres server, DatabaseSettings settings, DataFolder.Lock lock)
        implements AutoCloseable {

    private static final String SUPERUSER = "postgres";

    /** Starts the database kept in the folder, making it first when there is none. */
    static EmbeddedDatabase start(DataFolder folder, boolean durable) {
        try {
            var lock = folder.lock();
            boolean ready = Files.exists(folder.ready());
            LeftoverServer.stop(folder.cluster());
            if (!ready) {
                FileSystemUtils.deleteRecursively(folder.cluster());
            }
            var secrets = secrets(folder);
            var server = launch(folder, durable, ready ? secrets.getProperty(SUPERUSER) : null);
            var settings = settings(server.getPort(), secrets);
            if (!ready) {
                Bootstrap.run(server.getPostgresDatabase(), secrets.getProperty(SUPERUSER), settings, folder.cluster());
                Files.createFile(folder.ready());
            }
            return new EmbeddedDatabase(server, settings, lock);
        } catch (IOException | SQLException e) {
            throw new IllegalStateException("The embedded database did not start. " + e.getMessage(), e);
        }
    }

    /** Reaches the server that runs in the folder now; empty when none does. */
    static Optional<DatabaseSettings> running(DataFolder folder) {
        try {
            return LeftoverServer.of(folder.cluster()).map(server -> settings(server.port(), secrets(folder)));
        } catch (IOException e) {
            throw new IllegalStateException("Cannot tell whether a database runs in " + folder.root(), e);
        }
    }

    @Override
    public void close() throws IOException {
        server.close();
        lock.close();
    }

    private static EmbeddedPostgres launch(DataFolder folder, boolean durable, @Nullable String password)
            throws IOException {
        var onOff = durable ? "on" : "off";
        var builder = EmbeddedPostgres.builder()
                .setDataDirectory(folder.cluster())
                .setCleanDataDirectory(false)
                .setPGStartupWait(Duration.ofSeconds(60))
                .setServerConfig("fsync", onOff)
                .setServerConfig("synchronous_commit", onOff)
                .setServerConfig("full_page_writes", onOff)
                .setServerConfig("max_connections", "100")
                .setServerConfig("shared_buffers", "256MB")
                .setServerConfig("password_encryption", "scram-sha-256")
                .setServerConfig("timezone", "UTC")
                .setOutputRedirector(ProcessBuilder.Redirect.DISCARD)
                .setErrorRedirector(ProcessBuilder.Redirect.DISCARD);
        if (password != null) {
            builder.setConnectConfig("password", password);
        }
        return builder.start();
    }

    private static DatabaseSettings settings(int port, Properties secrets) {
        Map<DatabaseRole, String> passwords = new EnumMap<>(DatabaseRole.class);
        for (var role : DatabaseRole.values()) {
            passwords.put(role, secrets.getProperty(role.user()));
        }
        return new DatabaseSettings("jdbc:postgresql://localhost:" + port + "/espalier", passwords);
    }

    private static Properties secrets(DataFolder folder) {
        List<String> names = new ArrayList<>();
        names.add(SUPERUSER);
        for (var role : DatabaseRole.values()) {
            names.add(role.user());
        }
        return Secrets.keptIn(folder.secrets(), names);
    }
}
