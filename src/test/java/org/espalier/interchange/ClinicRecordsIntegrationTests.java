package org.espalier.interchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.assertj.core.groups.Tuple;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.science.quantity.Side;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.ProductKind;
import org.espalier.treatment.CareStep;
import org.espalier.treatment.MeasuredMinutes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;

/** A hospital's records out of one house and into another place: the same, once, and never half. */
@IntegrationTest
class ClinicRecordsIntegrationTests {

    @Autowired
    TestClinic clinic;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    TestNetwork network;

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
        assertThat(treated.standing().getFirst().data().orElseThrow().measured())
                .isEqualTo(new MeasuredMinutes(42, null));
        assertThat(clinic.treatment(to, "-B2").limb(Side.LEFT).ended()).contains(CareStep.EndReason.STRAIGHT);
        assertThat(clinic.treatment(to, "-B2").isInCare()).isTrue();
        assertThat(clinic.treatment(to, "C-3").isInCare()).isFalse();
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

    /** What was used up and what holds a cut bone is traced by its lot as plates and screws are. */
    @Test
    void everyPieceOfAKnownKindComesIntoTheCatalogueWithItsLots() throws IOException {
        var to = clinic.empty();
        var reference = "S" + System.nanoTime();
        write(reference, "2030-01-31", "2031-01-31, none", "30");

        var report = take(to);

        assertThat(report.problems()).isEmpty();
        assertThat(lots(to, reference + "-blade"))
                .containsExactly(tuple(ProductKind.CONSUMABLE, "L-5", LocalDate.of(2030, 1, 31)));
        assertThat(lots(to, reference + "-plate"))
                .containsExactlyInAnyOrder(
                        tuple(ProductKind.PLATE, "L-6", LocalDate.of(2031, 1, 31)),
                        tuple(ProductKind.PLATE, "L-7", null));
        assertThat(take(to).bringsSomething()).isFalse();

        write(reference, "2030-01-31", "2031-01-31, none", "31");
        assertThat(take(to).problems())
                .extracting(FileProblem::column, FileProblem::reason)
                .containsExactly(tuple("theatre_minutes", FileReason.MINUTES_ON_RECORD));
        var elsewhere = clinic.empty();
        write(reference, "2030-01-31", "2032-01-31, none", "30");
        assertThat(take(elsewhere).problems())
                .extracting(FileProblem::column, FileProblem::reason)
                .containsExactly(tuple("lots", FileReason.OTHER_LAST_DAY));
        write(reference, "2030-01-31", "2031-01-31", "30");
        assertThat(take(elsewhere).problems())
                .as("two lots have two days")
                .extracting(FileProblem::column, FileProblem::reason)
                .containsExactly(tuple("lots", FileReason.NOT_A_PIECE));
    }

    private ImportReport take(TestClinic.Hospital to) {
        return intake.take(to.site(), new ClinicFolder(folder.resolve("by-hand")), Portion.ALL);
    }

    private void write(String reference, String bladeDay, String plateDays, String minutes) throws IOException {
        var where = Files.createDirectories(folder.resolve("by-hand"));
        Files.writeString(where.resolve("children.csv"), """
                local_number,family_name,given_name,birth_date,sex
                7,Brought,In,2014-01-01,female
                """);
        Files.writeString(where.resolve("procedures.csv"), """
                local_number,procedure,date,elsewhere,surgeon,note,next_date,next_why,theatre_minutes,\
                anaesthesia_minutes,kind,side,bone,end,plate_side,implant,description,pieces,lots,fate,answers
                7,1,2024-02-05,no,,,2024-05-01,film,%s,,osteotomy,L,,,,,plate and screws,5,"%s",,
                """.formatted(
                minutes,
                String.join(
                        "\n",
                        "used up | saw blade | " + reference + "-blade | L-5 | " + bladeDay + " | consumable",
                        "body | locking plate | " + reference + "-plate | L-6, L-7 | " + plateDays + " | plate")));
    }

    private List<Tuple> lots(TestClinic.Hospital to, String reference) {
        return network.as(to.staff(), () -> catalogue.search(reference, Optional.empty()).stream()
                .flatMap(product -> catalogue.lots(product.id()).stream()
                        .map(lot -> tuple(product.data().kind(), lot.number(), lot.expires())))
                .toList());
    }

    private String text(String where, ClinicFile file) throws IOException {
        return Files.readString(folder.resolve(where).resolve(file.fileName()));
    }
}
