package org.espalier.platform;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.time.Duration;
import org.awaitility.Awaitility;
import org.espalier.Espalier;
import org.espalier.Program;
import org.espalier.platform.DatabaseConfiguration.DatabaseServer;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.stereotype.Component;

/** Another node of the network in a process of its own, over the same database and the same film folder. */
public final class SecondNode implements AutoCloseable {

    private final Process process;
    private final int port;

    private SecondNode(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    public static void main(String[] arguments) {
        new SpringApplicationBuilder(Espalier.class).run(arguments);
    }

    public int port() {
        return port;
    }

    /** As a power cut does: at once, without any farewell. */
    public void kill() {
        process.destroyForcibly().onExit().join();
    }

    @Override
    public void close() {
        kill();
    }

    /** Starts such nodes. */
    @Component
    public static class Starter {

        private final DatabaseServer server;
        private final PlatformProperties properties;

        Starter(DatabaseServer server, PlatformProperties properties) {
            this.server = server;
            this.properties = properties;
        }

        /** A node that answers. */
        public SecondNode start() throws IOException {
            int port = freePort();
            var builder = Program.of(
                    SecondNode.class,
                    "--espalier.data=" + properties.data(),
                    "--server.port=" + port,
                    "--management.server.port=0",
                    "--espalier.access.passkey.origins=http://localhost:" + port);
            var environment = builder.environment();
            environment.put("ESPALIER_DB_URL", server.settings().url());
            for (var role : DatabaseRole.values()) {
                environment.put(
                        "ESPALIER_DB_" + role.name() + "_PASSWORD",
                        server.settings().password(role));
            }
            var log = Files.createTempFile("second-node", ".log");
            var process = builder.redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            Awaitility.await("a second node, see " + log)
                    .atMost(Duration.ofSeconds(240))
                    .pollInterval(Duration.ofMillis(500))
                    .until(() -> answers(port) || !process.isAlive());
            if (!process.isAlive()) {
                throw new AssertionError("the second node died, see " + log);
            }
            return new SecondNode(process, port);
        }

        private static boolean answers(int port) {
            try (var client = HttpClient.newHttpClient()) {
                var page = HttpRequest.newBuilder(URI.create("http://localhost:" + port + "/login"))
                        .build();
                return client.send(page, BodyHandlers.discarding()).statusCode() == 200;
            } catch (IOException notYet) {
                return false;
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            }
        }

        private static int freePort() {
            try (var socket = new ServerSocket(0)) {
                return socket.getLocalPort();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
