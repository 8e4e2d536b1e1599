package org.espalier.interchange;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.espalier.access.SiteId;
import org.espalier.platform.CommandWords;
import org.espalier.platform.DataFolder;
import org.espalier.platform.House;

/** {@code import FOLDER --site CODE [--partial] [--data FOLDER]}: a clinic's own records into the house. */
public final class ImportCommand {

    static final int DONE = 0;
    static final int REFUSED = 2;
    static final String SITE = "--site";
    static final String DATA = "--data";
    private static final String PARTIAL = "--partial";

    private ImportCommand() {}

    /**
     * Runs the command.
     *
     * @param words what follows the command's name
     * @param application the class that starts the house
     * @return the exit status: 0 when all was taken, 2 when anything was refused
     */
    public static int run(List<String> words, Class<?> application, PrintStream out, PrintStream err) {
        try {
            var asked = CommandWords.parse(words, Set.of(SITE, DATA), Set.of(PARTIAL));
            var folder = folder(asked);
            if (!Files.isDirectory(folder)) {
                throw new IllegalArgumentException("there is no folder " + folder);
            }
            try (var house = House.open(application, data(asked))) {
                return take(house, asked, new ClinicFolder(folder), out, err);
            }
        } catch (IllegalArgumentException e) {
            err.println("espalier: " + e.getMessage() + ".");
            return REFUSED;
        }
    }

    static Path folder(CommandWords asked) {
        if (asked.rest().size() != 1) {
            throw new IllegalArgumentException("name one folder");
        }
        return Path.of(asked.rest().getFirst()).toAbsolutePath();
    }

    static DataFolder data(CommandWords asked) {
        return asked.option(DATA).map(Path::of).map(DataFolder::new).orElseGet(DataFolder::standard);
    }

    static SiteId site(House house, CommandWords asked) {
        var code = asked.option(SITE).orElseThrow(() -> new IllegalArgumentException("name the hospital: --site CODE"));
        return house.part(JdbcBroughtInRepository.class)
                .site(code)
                .orElseThrow(() -> new IllegalArgumentException("there is no hospital with the code " + code));
    }

    private static int take(House house, CommandWords asked, ClinicFolder folder, PrintStream out, PrintStream err) {
        var portion = asked.switches().contains(PARTIAL) ? Portion.GOOD_ROWS : Portion.ALL;
        var report = house.part(ClinicImport.class).take(site(house, asked), folder, portion);
        report.problems().forEach(problem -> err.println(problem.asText()));
        report.counts().forEach(count -> out.println(count.asText()));
        if (report.counts().isEmpty()) {
            err.println("espalier: the folder holds none of the files; docs/method/interchange.md names them.");
            return REFUSED;
        }
        if (!report.taken()) {
            err.println("Nothing was taken: mend the rows above, or take the others with --partial.");
        }
        return report.isGood() ? DONE : REFUSED;
    }
}
