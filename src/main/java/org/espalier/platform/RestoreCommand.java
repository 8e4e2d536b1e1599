package org.espalier.platform;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Set;

/** {@code restore FILE [--data FOLDER]}: fills an empty database and film folder from a backup file. */
public final class RestoreCommand {

    private RestoreCommand() {}

    /** Runs the command and returns its exit status. */
    public static int run(List<String> words, PrintStream out, PrintStream err) {
        try {
            var asked = CommandWords.parse(words, Set.of(BackupCommand.DATA), Set.of());
            if (asked.rest().size() != 1) {
                throw new IllegalArgumentException("restore needs one file name");
            }
            var file = Path.of(asked.rest().getFirst()).toAbsolutePath();
            if (!Files.isReadable(file)) {
                throw new IllegalArgumentException("cannot read " + file);
            }
            var data = asked.option(BackupCommand.DATA)
                    .map(Path::of)
                    .map(DataFolder::new)
                    .orElseGet(DataFolder::standard);
            try (var database = StandingDatabase.of(data)) {
                new Restore(database.settings(), new Blobs(data.films(), Clock.systemUTC())).read(file, out);
            }
            return 0;
        } catch (IllegalArgumentException e) {
            err.println("espalier: " + e.getMessage() + ".");
            return 2;
        } catch (IOException | SQLException e) {
            err.println("espalier: nothing was restored: " + e.getMessage());
            return 1;
        }
    }
}
