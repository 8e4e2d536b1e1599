package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiFunction;
import org.espalier.Espalier;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.beans.factory.annotation.Value;

/** The commands beside a house that runs on the same database. */
@IntegrationTest
class ClinicCommandIntegrationTests {

    @Autowired
    TestClinic clinic;

    @Autowired
    TestNetwork network;

    @Value("${espalier.data}")
    Path data;

    @TempDir
    Path folder;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @Test
    void writesAHospitalAndReadsItIntoAnother() throws IOException {
        var from = clinic.rich();
        var to = clinic.empty();
        assertThat(export("one", code(from.site()))).isZero();
        assertThat(said(out)).startsWith("Written: " + folder.resolve("one"));
        assertThat(intake("one", code(to.site()))).as(said(err)).isZero();
        assertThat(said(out)).contains("children.csv: 3 new, 0 known, 0 changed, 0 bad");
        assertThat(export("other", code(to.site()))).isZero();
        assertThat(Files.readString(folder.resolve("other/readings.csv")))
                .isEqualTo(Files.readString(folder.resolve("one/readings.csv")));
    }

    @Test
    void saysWhatIsWrongAndTakesNothing() throws IOException {
        var to = clinic.empty();
        Files.createDirectories(folder.resolve("bad"));
        Files.writeString(folder.resolve("bad/children.csv"), """
                local_number,family_name,given_name,birth_date,sex
                1,Quay,,soon,female
                """);
        assertThat(intake("bad", code(to.site()))).isEqualTo(ImportCommand.REFUSED);
        assertThat(said(err)).isEqualTo("""
                children.csv, line 2, column birth_date: "soon" is not a date. Write it as in 2019-07-14.
                Nothing was taken: mend the rows above, or take the others with --partial.
                """);
    }

    @Test
    void refusesWhatItCannotTell() throws IOException {
        assertThat(intake("nowhere", "T1")).isEqualTo(ImportCommand.REFUSED);
        assertThat(said(err)).isEqualTo("espalier: there is no folder " + folder.resolve("nowhere") + ".\n");
        Files.createDirectories(folder.resolve("full/of"));
        assertThat(export("full", "T1")).isEqualTo(ImportCommand.REFUSED);
        assertThat(said(err)).contains(folder.resolve("full") + " is not empty; name a new folder.");
        assertThat(export("new", "NOBODY")).isEqualTo(ImportCommand.REFUSED);
        assertThat(said(err)).contains("there is no hospital with the code NOBODY.");
    }

    private int export(String where, String code) {
        return run((said, failed) -> ExportCommand.run(words(where, code), Espalier.class, said, failed));
    }

    private int intake(String where, String code) {
        return run((said, failed) -> ImportCommand.run(words(where, code), Espalier.class, said, failed));
    }

    private int run(BiFunction<PrintStream, PrintStream, Integer> command) {
        return command.apply(
                new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private List<String> words(String where, String code) {
        return List.of(folder.resolve(where).toString(), "--site", code, "--data", data.toString());
    }

    private String code(SiteId site) {
        return network.owner()
                .sql("select code from site where id = ?")
                .param(site.value())
                .query(String.class)
                .single();
    }

    private static String said(ByteArrayOutputStream stream) {
        return stream.toString(StandardCharsets.UTF_8);
    }
}
