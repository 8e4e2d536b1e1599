package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.espalier.film.TestDoor;
import org.espalier.patient.ChildData;
import org.espalier.platform.Ids;
import org.springframework.stereotype.Component;

/** Records that were brought in, for a test. */
@Component
public class TestRecords {

    private final ImportService intake;
    private final Ids ids;

    TestRecords(ImportService intake, Ids ids) {
        this.intake = intake;
        this.ids = ids;
    }

    /** A folder that tells of the child and of another, taken by who treats there. */
    public ClinicFolder arrange(TestDoor.Sender treating, ChildData child) {
        var folder = Path.of("target/records/" + ids.next());
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(ClinicFile.CHILDREN.fileName()), """
                    local_number,family_name,given_name,birth_date,sex
                    %s,%s,%s,%s,female
                    BROUGHT-1,Brought,In,2018-01-01,male
                    """.formatted(
                            child.localNumber(), child.familyName(), child.givenName(), child.birthDate()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        var records = new ClinicFolder(folder);
        var report = treating.does(() -> intake.take(treating.site(), records, Portion.ALL));
        if (!report.taken() || !report.bringsSomething()) {
            throw new AssertionError("not taken: " + report);
        }
        return records;
    }
}
