package org.espalier.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.stream.Stream;
import org.espalier.Espalier;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;

/** The whole application over a new embedded database in a temporary folder, to be measured. */
final class BenchmarkHouse {

    private BenchmarkHouse() {}

    /** Opens it; further settings, {@code --name=value}, come last and win. */
    static ConfigurableApplicationContext open(String... settings) throws IOException {
        var own = Stream.of(
                "--espalier.data=" + Files.createTempDirectory("espalier-bench"),
                "--espalier.database.embedded=true",
                "--server.port=0",
                "--management.server.port=0",
                "--logging.level.root=WARN");
        return SpringApplication.run(
                Espalier.class, Stream.concat(own, Arrays.stream(settings)).toArray(String[]::new));
    }
}
