package org.espalier.interchange;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.espalier.platform.CommandWords;
import org.espalier.platform.House;

/** {@code export FOLDER --site CODE [--data FOLDER]}: a hospital's records into files that the import reads. */
public final class ExportCommand {

    private ExportCommand() {}

    /**
     * Runs the command.
     *
     * @param words what follows the command's name
     * @param application the class that starts the house
     * @return the exit status: 0 when all was written, 2 when something could not be
     */
    public static int run(List<String> words, Class<?> application, PrintStream out, PrintStream err) {
        try {
            var asked = CommandWords.parse(words, Set.of(ImportCommand.SITE, ImportCommand.DATA), Set.of());
            var folder = ImportCommand.folder(asked);
            demandEmpty(folder);
            try (var house = House.open(application, ImportCommand.data(asked))) {
                return write(house, asked, folder, out, err);
            }
        } catch (IllegalArgumentException e) {
            err.println("espalier: " + e.getMessage() + ".");
            return ImportCommand.REFUSED;
        } catch (UncheckedIOException e) {
            err.println("espalier: the files could not be written: " + e.getMessage() + ".");
            return ImportCommand.REFUSED;
        }
    }

    /** What lies there already would be taken for what was written. */
    private static void demandEmpty(Path folder) {
        try {
            if (Files.exists(folder) && (!Files.isDirectory(folder) || !isEmpty(folder))) {
                throw new IllegalArgumentException(folder + " is not empty; name a new folder");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (var content = Files.list(folder)) {
            return content.findAny().isEmpty();
        }
    }

    private static int write(House house, CommandWords asked, Path folder, PrintStream out, PrintStream err) {
        long leftOut = house.part(ClinicExport.class).write(ImportCommand.site(house, asked), folder);
        out.println("Written: " + folder
                + ". It holds children's records: keep it where only those may look who treat them.");
        if (leftOut > 0) {
            err.println(leftOut + " children have no local number and are left out: a file could not tell them apart.");
            return ImportCommand.REFUSED;
        }
        return ImportCommand.DONE;
    }
}
