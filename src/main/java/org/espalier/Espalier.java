package org.espalier;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import org.espalier.followup.RecallCommand;
import org.espalier.interchange.ExportCommand;
import org.espalier.interchange.ForecastCommand;
import org.espalier.interchange.ImportCommand;
import org.espalier.interchange.MeasureCommand;
import org.espalier.platform.BackupCommand;
import org.espalier.platform.CommandWords;
import org.espalier.platform.DataFolder;
import org.espalier.platform.RestoreCommand;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** The door of the program: the first word names the command; the launcher {@code espalier} explains them all. */
@SpringBootApplication
public class Espalier {

    private static final String PORT = "--port";

    public static void main(String[] arguments) {
        var words = Arrays.asList(arguments);
        var command = words.isEmpty() ? "run" : words.getFirst();
        var rest = words.isEmpty() ? words : words.subList(1, words.size());
        switch (command) {
            case "demo" -> demo(CommandWords.parse(rest, Set.of(PORT), Set.of("--fresh")));
            case "run" -> run(CommandWords.parse(rest, Set.of(PORT), Set.of("--embedded")));
            case "measure" -> System.exit(MeasureCommand.run(rest, System.in, System.out, System.err));
            case "forecast" -> System.exit(ForecastCommand.run(rest, System.out, System.err));
            case "import" -> System.exit(ImportCommand.run(rest, Espalier.class, System.out, System.err));
            case "export" -> System.exit(ExportCommand.run(rest, Espalier.class, System.out, System.err));
            case "recall-rebuild" -> System.exit(RecallCommand.run(rest, Espalier.class, System.out, System.err));
            case "backup" -> System.exit(BackupCommand.run(rest, System.out, System.err));
            case "restore" -> System.exit(RestoreCommand.run(rest, System.out, System.err));
            default -> throw new IllegalArgumentException("there is no command " + command);
        }
    }

    private static void demo(CommandWords asked) {
        var folder = new DataFolder(Path.of("var/demo"));
        if (asked.switches().contains("--fresh")) {
            forget(folder);
        }
        serve(asked, folder, true, "demo");
    }

    private static void run(CommandWords asked) {
        serve(asked, DataFolder.standard(), asked.switches().contains("--embedded"), "run");
    }

    private static void forget(DataFolder folder) {
        try {
            folder.forget();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void serve(CommandWords asked, DataFolder folder, boolean embedded, String profile) {
        var application = new SpringApplication(Espalier.class);
        application.setAdditionalProfiles(profile);
        application.run(
                "--espalier.data=" + folder.root(),
                "--espalier.database.embedded=" + embedded,
                "--server.port=" + asked.option(PORT).orElse("8080"));
    }
}
