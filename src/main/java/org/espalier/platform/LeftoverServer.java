package org.espalier.platform;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** A database server that still runs in its folder, as its own {@code postmaster.pid} tells. */
record LeftoverServer(ProcessHandle process, int port) {

    private static final Logger LOG = LoggerFactory.getLogger(LeftoverServer.class);
    private static final Duration WAIT = Duration.ofSeconds(30);
    private static final int LINES_WITH_PORT = 4;

    static Optional<LeftoverServer> of(Path cluster) throws IOException {
        var file = cluster.resolve("postmaster.pid");
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        var lines = Files.readAllLines(file);
        if (lines.size() < LINES_WITH_PORT || !Path.of(lines.get(1)).equals(cluster)) {
            return Optional.empty();
        }
        int port = Integer.parseInt(lines.get(3).strip());
        return ProcessHandle.of(Long.parseLong(lines.getFirst().strip()))
                .map(process -> new LeftoverServer(process, port));
    }

    /** A killed program leaves its server running; it is stopped so that the next start finds the folder free. */
    static void stop(Path cluster) throws IOException {
        var leftover = of(cluster);
        if (leftover.isEmpty()) {
            return;
        }
        LOG.info("Stopping the database server that an earlier run left behind");
        var process = leftover.get().process();
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start();
        try {
            process.onExit().get(WAIT.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Interrupted while the earlier database server stopped", e);
        } catch (ExecutionException | TimeoutException e) {
            throw new IOException("The earlier database server did not stop within " + WAIT, e);
        }
    }
}
