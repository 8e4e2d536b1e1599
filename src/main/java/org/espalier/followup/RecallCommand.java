package org.espalier.followup;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.espalier.platform.CommandWords;
import org.espalier.platform.DataFolder;
import org.espalier.platform.House;

/** {@code recall-rebuild [--data FOLDER]}: what the recall keeps beside the facts, worked out anew from them. */
public final class RecallCommand {

    private static final String DATA = "--data";

    private RecallCommand() {}

    /**
     * Runs the command.
     *
     * @param words what follows the command's name
     * @param application the class that starts the house
     * @return the exit status
     */
    public static int run(List<String> words, Class<?> application, PrintStream out, PrintStream err) {
        try {
            var asked = CommandWords.parse(words, Set.of(DATA), Set.of());
            if (!asked.rest().isEmpty()) {
                throw new IllegalArgumentException("nothing is named but the data folder");
            }
            var data = asked.option(DATA).map(Path::of).map(DataFolder::new).orElseGet(DataFolder::standard);
            try (var house = House.open(application, data)) {
                out.println("Recall: " + house.part(RecallNight.class).rebuild() + " open visits worked out anew.");
            }
            return 0;
        } catch (IllegalArgumentException e) {
            err.println("espalier: " + e.getMessage() + ".");
            return 2;
        }
    }
}
