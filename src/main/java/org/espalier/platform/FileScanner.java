package org.espalier.platform;

import java.io.DataOutputStream;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * Asks the hospital's own scanner for malicious content about a file before it is kept, by the streaming command that
 * such scanners answer over TCP: {@code zINSTREAM}, pieces each with its length in four bytes, an empty piece, and then
 * one line that ends in {@code OK} or {@code FOUND}. Anything but {@code OK} keeps the file out.
 */
final class FileScanner {

    private static final int PIECE_BYTES = 1 << 16;
    private static final Duration CONNECTING = Duration.ofSeconds(5);
    private static final Duration ANSWERING = Duration.ofMinutes(2);

    private final InetSocketAddress address;

    /** @param address host and port, such as {@code scanner.hospital.example:3310} */
    FileScanner(String address) {
        int colon = address.lastIndexOf(':');
        if (colon < 1 || !address.substring(colon + 1).matches("[0-9]{1,5}")) {
            throw new IllegalArgumentException("espalier.scanner needs host:port, not " + address);
        }
        this.address = InetSocketAddress.createUnresolved(
                address.substring(0, colon), Integer.parseInt(address.substring(colon + 1)));
    }

    /**
     * Whether the scanner found something in the file.
     *
     * @throws IOException when it does not answer, or answers that it could not look
     */
    boolean findsIn(Path file) throws IOException {
        try (var socket = new Socket()) {
            socket.setSoTimeout(Math.toIntExact(ANSWERING.toMillis()));
            socket.connect(
                    new InetSocketAddress(address.getHostString(), address.getPort()),
                    Math.toIntExact(CONNECTING.toMillis()));
            send(file, new DataOutputStream(socket.getOutputStream()));
            var answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                    .replace("\0", "")
                    .strip();
            if (!answer.endsWith("OK") && !answer.endsWith("FOUND")) {
                throw new IOException("the scanner could not look: " + answer);
            }
            return answer.endsWith("FOUND");
        }
    }

    private static void send(Path file, DataOutputStream out) throws IOException {
        out.write("zINSTREAM\0".getBytes(StandardCharsets.US_ASCII));
        var piece = new byte[PIECE_BYTES];
        try (var bytes = Files.newInputStream(file)) {
            for (int read = bytes.read(piece); read > 0; read = bytes.read(piece)) {
                out.writeInt(read);
                out.write(piece, 0, read);
            }
        }
        out.writeInt(0);
        out.flush();
    }
}
