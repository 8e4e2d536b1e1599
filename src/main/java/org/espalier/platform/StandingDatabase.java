package org.espalier.platform;

import java.io.IOException;
import java.util.Optional;

/**
 * The database a command works on: the external one the environment names, the embedded one that runs in the data
 * folder now, or the embedded one started for the length of the command.
 */
record StandingDatabase(DatabaseSettings settings, Optional<EmbeddedDatabase> started) implements AutoCloseable {

    static StandingDatabase of(DataFolder folder) {
        var url = Secrets.fromEnvironment("ESPALIER_DB_URL");
        if (url.isPresent()) {
            return new StandingDatabase(
                    new DatabaseSettings(url.get(), Secrets.rolesFromEnvironment()), Optional.empty());
        }
        var running = EmbeddedDatabase.running(folder);
        if (running.isPresent()) {
            return new StandingDatabase(running.get(), Optional.empty());
        }
        var database = EmbeddedDatabase.start(folder, true);
        return new StandingDatabase(database.settings(), Optional.of(database));
    }

    @Override
    public void close() throws IOException {
        if (started.isPresent()) {
            started.get().close();
        }
    }
}
