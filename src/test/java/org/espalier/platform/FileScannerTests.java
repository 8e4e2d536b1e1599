package org.espalier.platform;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A scanner that listens as the real ones do and knows one text as malicious. */
class FileScannerTests {

    private static final String MALICIOUS = "a text that this test calls malicious";

    @TempDir
    Path folder;

    private ServerSocket server;
    private volatile String trouble = "";
    private Blobs blobs;

    @BeforeEach
    void aScannerThatListens() throws IOException {
        server = new ServerSocket(0, 10, InetAddress.getLoopbackAddress());
        Thread.ofVirtual().start(this::listen);
        blobs = new Blobs(folder, new FileScanner("localhost:" + server.getLocalPort()), Clock.systemUTC());
    }

    @AfterEach
    void close() throws IOException {
        server.close();
    }

    private void listen() {
        while (!server.isClosed()) {
            try (var caller = server.accept()) {
                var in = new DataInputStream(caller.getInputStream());
                assertThat(new String(in.readNBytes(10), StandardCharsets.US_ASCII))
                        .isEqualTo("zINSTREAM\0");
                var seen = new StringBuilder();
                for (int size = in.readInt(); size > 0; size = in.readInt()) {
                    seen.append(new String(in.readNBytes(size), StandardCharsets.US_ASCII));
                }
                var found = seen.indexOf(MALICIOUS) >= 0 ? "stream: Text FOUND\0" : "stream: OK\0";
                caller.getOutputStream()
                        .write((trouble.isEmpty() ? found : trouble).getBytes(StandardCharsets.US_ASCII));
            } catch (IOException e) {
                return;
            }
        }
    }

    private BlobRef put(String text) throws IOException {
        return blobs.put(new ByteArrayInputStream(text.getBytes(StandardCharsets.US_ASCII)), 1 << 20);
    }

    private long files() throws IOException {
        try (var files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).count();
        }
    }

    @Test
    void keepsWhatTheScannerFindsNothingInHoweverLong() throws IOException {
        assertThat(blobs.open(put("x".repeat(200_000)))).hasContent("x".repeat(200_000));
    }

    @Test
    void keepsNothingOfWhatTheScannerFindsAcrossPiecesToo() throws IOException {
        assertThatThrownBy(() -> put("x".repeat((1 << 16) - 5) + MALICIOUS)).isInstanceOf(Blobs.Infected.class);
        assertThat(files()).isZero();
    }

    @Test
    void keepsNothingWhileTheScannerCannotLook() throws IOException {
        trouble = "INSTREAM size limit exceeded. ERROR\0";
        assertThatThrownBy(() -> put("fine")).isInstanceOf(IOException.class).hasMessageContaining("could not look");
        server.close();
        assertThatThrownBy(() -> put("fine")).isInstanceOf(IOException.class);
        assertThat(files()).isZero();
    }

    @Test
    void refusesAnAddressWithoutAPort() {
        assertThatThrownBy(() -> new FileScanner("scanner.example"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("host:port");
    }
}
