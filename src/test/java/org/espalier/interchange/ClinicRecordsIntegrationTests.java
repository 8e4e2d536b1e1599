package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.espalier.IntegrationTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;

/** A hospital's records out of one house and into another place: the same, once, and never half. */
@IntegrationTest
class ClinicRecordsIntegrationTests {

    @Autowired
    TestClinic clinic;

    @Autowired
    ClinicExport export;

    @Autowired
    ClinicImport intake;

    @TempDir
    Path folder;

    @Test
    void whatIsWrittenIsReadAndWrittenAgainTheSame() throws IOException {
        var from = clinic.rich();
        var to = clinic.empty();
        export.write(from.site(), folder.resolve("one"));
        var report = intake.take(to.site(), new ClinicFolder(folder.resolve("one")), Portion.ALL);
        assertThat(report.problems()).isEmpty();
        export.write(to.site(), folder.resolve("other"));
        for (var file : ClinicFile.values()) {
            assertThat(text("other", file)).as(file.fileName()).isEqualTo(text("one", file));
            assertThat(text("one", file).lines().count()).as(file.fileName()).isGreaterThan(1);
        }
        assertThat(report.counts()).allSatisfy(count -> {
            assertThat(count.fresh()).as(count.asText()).isGreaterThan(1);
            assertThat(count.changed() + count.bad()).as(count.asText()).isZero();
        });
        var treated = clinic.treatment(to, "A-1");
        assertThat(treated.waiting()).extracting(plan -> plan.plan().on()).containsExactly(LocalDate.of(2025, 9, 3));
        assertThat(treated.pieces().out())
                .extracting(out -> out.piece().lotNumbers())
                .containsExactlyInAnyOrder("A-1", "B-1, B-2", "L-9");
    }

    @Test
    void aSecondTimeNothingIsDoubled() throws IOException {
        var from = clinic.rich();
        var to = clinic.empty();
        export.write(from.site(), folder.resolve("one"));
        intake.take(to.site(), new ClinicFolder(folder.resolve("one")), Portion.ALL);
        var again = intake.take(to.site(), new ClinicFolder(folder.resolve("one")), Portion.ALL);
        assertThat(again.problems()).isEmpty();
        assertThat(again.counts())
                .allSatisfy(
                        count -> assertThat(count.known()).as(count.asText()).isEqualTo(count.rows()));
        assertThat(again.bringsSomething()).isFalse();
        export.write(to.site(), folder.resolve("other"));
        for (var file : ClinicFile.values()) {
            assertThat(text("other", file)).as(file.fileName()).isEqualTo(text("one", file));
        }
    }

    @Test
    void whereTheRecordsCameFromNothingIsNew() throws IOException {
        var from = clinic.rich();
        export.write(from.site(), folder.resolve("one"));
        var report = intake.take(from.site(), new ClinicFolder(folder.resolve("one")), Portion.ALL);
        assertThat(report.problems()).isEmpty();
        assertThat(report.bringsSomething()).as(report.counts().toString()).isFalse();
    }

    private String text(String where, ClinicFile file) throws IOException {
        return Files.readString(folder.resolve(where).resolve(file.fileName()));
    }
}
