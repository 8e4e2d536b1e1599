package org.espalier.film.internal.dicomweb;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ConnectException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.awaitility.Awaitility;

/**
 * A general-purpose DICOM server of the system, run on loopback for one test; the test is skipped where it is missing.
 */
final class PeerArchive implements AutoCloseable {

    private static final Path PROGRAM = Path.of("/usr/sbin/Orthanc");
    private static final Path PLUGIN = Path.of("/usr/share/orthanc/plugins/libOrthancDicomWeb.so");

    private static final String CONFIGURATION = """
            {
              "Name": "Peer", "StorageDirectory": "%1$s", "IndexDirectory": "%1$s", "Plugins": ["%2$s"],
              "HttpPort": %3$d, "RemoteAccessAllowed": false, "AuthenticationEnabled": false,
              "DicomServerEnabled": false, "KeepAlive": false, "OverwriteInstances": true, "ExecuteLuaEnabled": true,
              "DicomWeb": {"Enable": true, "Root": "/dicom-web/", "Servers": {
                "espalier": {"Url": "http://localhost:%4$d/dicom-web/",
                             "HttpHeaders": {"Authorization": "Bearer %5$s"}}}}
            }""";

    private final HttpClient client =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final Process process;
    private final String root;

    private PeerArchive(Process process, int port) {
        this.process = process;
        root = "http://localhost:" + port;
    }

    static PeerArchive start(Path folder, int ourPort, String token) throws IOException {
        assumeTrue(
                Files.isExecutable(PROGRAM) && Files.exists(PLUGIN),
                "no DICOM server to talk to; install Debian's orthanc and orthanc-dicomweb");
        int port = freePort();
        var configuration = Files.writeString(
                folder.resolve("peer.json"),
                CONFIGURATION.formatted(folder.resolve("kept"), PLUGIN, port, ourPort, token));
        var process = new ProcessBuilder(PROGRAM.toString(), configuration.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("peer.log").toFile())
                .start();
        var peer = new PeerArchive(process, port);
        Awaitility.await().atMost(Duration.ofSeconds(60)).until(peer::answers);
        return peer;
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private boolean answers() {
        try {
            return get("/system").contains("Peer");
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof ConnectException) {
                return false;
            }
            throw e;
        }
    }

    String get(String path) {
        return send(HttpRequest.newBuilder(URI.create(root + path)).GET());
    }

    String post(String path, String json) {
        return post(path, BodyPublishers.ofString(json));
    }

    String post(String path, byte[] bytes) {
        return post(path, BodyPublishers.ofByteArray(bytes));
    }

    private String post(String path, BodyPublisher body) {
        return send(HttpRequest.newBuilder(URI.create(root + path)).POST(body));
    }

    void delete(String path) {
        send(HttpRequest.newBuilder(URI.create(root + path)).DELETE());
    }

    private String send(HttpRequest.Builder request) {
        try {
            var answer = client.send(request.build(), BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new AssertionError("the peer answered " + answer.statusCode() + ": " + answer.body());
            }
            return answer.body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() throws InterruptedException {
        process.destroy();
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            process.destroyForcibly();
        }
    }
}
