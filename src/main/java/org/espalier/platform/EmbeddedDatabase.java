package org.espalier.platform;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * PostgreSQL run by the house itself in a folder: password-protected, durable, and able to start again after the program
 * that ran it was killed.
 */
final class EmbeddedDatabase implements AutoCloseable {

    private static final Logger LOG = LoggerFactory.getLogger(EmbeddedDatabase.class);
    private static final String SUPERUSER = "postgres";
    private static final Duration STOP_WAIT = Duration.ofSeconds(30);

    private final EmbeddedPostgres server;
    private final DatabaseSettings settings;

    private EmbeddedDatabase(EmbeddedPostgres server, DatabaseSettings settings) {
        this.server = server;
        this.settings = settings;
    }

    /** Starts the database kept in the folder, making it first when there is none. */
    static EmbeddedDatabase start(Path folder, boolean durable) {
        var cluster = folder.resolve("database").toAbsolutePath();
        var ready = folder.resolve("database.ready").toAbsolutePath();
        var secrets = Secrets.keptIn(folder.resolve("database.secrets").toAbsolutePath(), secretNames());
        try {
            Files.createDirectories(folder);
            if (Files.exists(ready)) {
                stopLeftover(cluster);
            } else {
                discardHalfMade(cluster);
            }
            var server = launch(cluster, durable, Files.exists(ready) ? secrets.getProperty(SUPERUSER) : null);
            var settings = settingsOf(server.getPort(), secrets);
            if (!Files.exists(ready)) {
                Bootstrap.run(server.getPostgresDatabase(), secrets.getProperty(SUPERUSER), settings, cluster);
                Files.createFile(ready);
            }
            return new EmbeddedDatabase(server, settings);
        } catch (IOException | SQLException e) {
            throw new IllegalStateException("The embedded database in " + cluster + " did not start", e);
        }
    }

    /** Reaches the server that runs in the folder now; empty when none does. */
    static Optional<DatabaseSettings> running(Path folder) {
        var cluster = folder.resolve("database").toAbsolutePath();
        try {
            if (leftover(cluster).isEmpty()) {
                return Optional.empty();
            }
            int port = Integer.parseInt(
                    Files.readAllLines(cluster.resolve("postmaster.pid")).get(3).strip());
            return Optional.of(settingsOf(
                    port, Secrets.keptIn(folder.resolve("database.secrets").toAbsolutePath(), secretNames())));
        } catch (IOException e) {
            throw new IllegalStateException("Cannot tell whether a database runs in " + folder, e);
        }
    }

    DatabaseSettings settings() {
        return settings;
    }

    @Override
    public void close() throws IOException {
        server.close();
    }

    private static EmbeddedPostgres launch(
            Path cluster, boolean durable, @org.jspecify.annotations.Nullable String password) throws IOException {
        var onOff = durable ? "on" : "off";
        var builder = EmbeddedPostgres.builder()
                .setDataDirectory(cluster)
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

    private static DatabaseSettings settingsOf(int port, Properties secrets) {
        Map<DatabaseRole, String> passwords = new EnumMap<>(DatabaseRole.class);
        for (var role : DatabaseRole.values()) {
            passwords.put(role, secrets.getProperty(role.user()));
        }
        return new DatabaseSettings("jdbc:postgresql://localhost:" + port + "/espalier", passwords);
    }

    private static List<String> secretNames() {
        var names = new ArrayList<String>();
        names.add(SUPERUSER);
        for (var role : DatabaseRole.values()) {
            names.add(role.user());
        }
        return names;
    }

    /** A killed program leaves its server running; it is stopped so that this start finds the folder free. */
    private static void stopLeftover(Path cluster) throws IOException {
        var leftover = leftover(cluster);
        if (leftover.isEmpty()) {
            return;
        }
        LOG.info("Stopping the database server that an earlier run left behind");
        new ProcessBuilder("kill", "-INT", Long.toString(leftover.get().pid())).start();
        try {
            leftover.get().onExit().get(STOP_WAIT.toSeconds(), java.util.concurrent.TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted while the earlier database server stopped", e);
        } catch (java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException e) {
            throw new IOException("The earlier database server did not stop within " + STOP_WAIT, e);
        }
    }

    private static Optional<ProcessHandle> leftover(Path cluster) throws IOException {
        var file = cluster.resolve("postmaster.pid");
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        var lines = Files.readAllLines(file);
        boolean ours = lines.size() > 1 && Path.of(lines.get(1)).equals(cluster);
        return ours ? ProcessHandle.of(Long.parseLong(lines.getFirst().strip())) : Optional.empty();
    }

    private static void discardHalfMade(Path cluster) throws IOException {
        stopLeftover(cluster);
        if (Files.exists(cluster)) {
            org.springframework.util.FileSystemUtils.deleteRecursively(cluster);
        }
    }
}
