package org.espalier;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * Gives the application under test a data folder and a port of its own: its passkeys belong to the address with the
 * port.
 */
class TestFolder implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        try {
            PseudoLanguage.write();
            var folder = Files.createTempDirectory("espalier-test");
            TestPropertyValues.of("espalier.data=" + folder, "server.port=" + freePort())
                    .applyTo(context);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static int freePort() throws IOException {
        try (var socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }
}
