package org.espalier;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;

/** Gives the application under test a data folder of its own. */
class TestFolder implements ApplicationContextInitializer<ConfigurableApplicationContext> {

    @Override
    public void initialize(ConfigurableApplicationContext context) {
        try {
            var folder = Files.createTempDirectory("espalier-test");
            TestPropertyValues.of("espalier.data=" + folder).applyTo(context);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
