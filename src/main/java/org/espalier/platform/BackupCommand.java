package org.espalier.platform;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Set;

/** {@code backup FILE [--data FOLDER]}: database and films into one file, while the application may be running. */
public final class BackupCommand {

    static final String DATA = "--data";

    private BackupCommand() {}

    /** Runs the command and returns its exit status. */
    public static int run(List<String> words, PrintStream out, PrintStream err) {
        try {
            var asked = CommandWords.parse(words, Set.of(DATA), Set.of());
            if (asked.rest().size() != 1) {
                throw new IllegalArgumentException("backup needs one file name");
            }
            var file = Path.of(asked.rest().getFirst()).toAbsolutePath();
            var data = asked.option(DATA).map(Path::of).map(DataFolder::new).orElseGet(DataFolder::standard);
            if (Files.exists(file)) {
                throw new IllegalArgumentException(file + " exists already; name a new file");
            }
            if (!Files.isDirectory(data.root())) {
                throw new IllegalArgumentException("there is no data folder " + data.root() + "; name it with " + DATA);
            }
            try (var database = StandingDatabase.of(data)) {
                new Backup(database.settings(), data.films()).write(file, out);
            }
            out.println("Backup: " + file + ". It holds children's records: keep it encrypted.");
            return 0;
        } catch (IllegalArgumentException e) {
            err.println("espalier: " + e.getMessage() + ".");
            return 2;
        } catch (IOException | SQLException e) {
            err.println("espalier: the backup failed and no file was left: " + e.getMessage());
            return 1;
        }
    }
}
