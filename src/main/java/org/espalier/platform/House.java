package org.espalier.platform;

import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.boot.builder.SpringApplicationBuilder;
import org.springframework.context.ConfigurableApplicationContext;

/**
 * The whole house opened for one command, on the database that stands: the external one, the embedded one of a house
 * that runs beside, or the embedded one started for the length of the command. Nobody is served: its door opens to this
 * machine alone, on a port nobody knows.
 */
public final class House implements AutoCloseable {

    private final ConfigurableApplicationContext context;

    private House(ConfigurableApplicationContext context) {
        this.context = context;
    }

    /**
     * Opens the house over a data folder.
     *
     * @throws IllegalArgumentException when no database is named and the folder holds none
     */
    public static House open(Class<?> application, DataFolder data) {
        if (Secrets.fromEnvironment("ESPALIER_DB_URL").isEmpty() && !Files.exists(data.ready())) {
            throw new IllegalArgumentException(
                    "there is no database in " + data.root() + "; name its folder with --data");
        }
        return new House(new SpringApplicationBuilder(application)
                .run(
                        "--espalier.data=" + data.root(),
                        "--espalier.database.standing=true",
                        "--server.address=127.0.0.1",
                        "--server.port=0",
                        "--management.server.port=0",
                        "--logging.level.root=WARN",
                        "--logging.threshold.console=OFF",
                        "--logging.file.name=" + logFile(data)));
    }

    private static Path logFile(DataFolder data) {
        return data.root().resolve("command.log");
    }

    /** A part of the house. */
    public <T> T part(Class<T> type) {
        return context.getBean(type);
    }

    @Override
    public void close() {
        context.close();
    }
}
