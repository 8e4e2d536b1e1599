package org.espalier.course.internal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.UUID;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Age;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class CoursePrintIntegrationTests {

    private static final int DPI = 110;

    @LocalServerPort
    int port;

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    ExaminationService examinations;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;

    @BeforeEach
    void child() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, LocalDate.of(2016, 5, 20));
    }

    @Test
    void printsBothLimbsOnAPageEachHoweverManyFilmsThereAre() throws IOException {
        for (int i = 0; i < 13; i++) {
            reader.signed(
                    surgeon,
                    reader.film(surgeon, child, LocalDate.of(2022, 2, 1).plusMonths(4L * i)),
                    2 * i);
        }
        var boneAge = new BoneAge(LocalDate.of(2025, 2, 1), Age.ofYears(9), BoneAgeMethod.HAND_ATLAS);
        surgeon.does(() -> {
            examinations.record(child, new FactId(ids.next()), boneAge);
            return child;
        });
        var answer = ask(surgeon.staff());
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
        assertThat(answer.headers().firstValue("Content-Disposition").orElseThrow())
                .matches("attachment; filename=\"course-\\d{4}-\\d\\d-\\d\\d\\.pdf\"");
        try (var pdf = Loader.loadPDF(answer.body())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            keep(pdf, "course-paper");
            assertThat(text(pdf, 1)).contains("INVENTED, Child", "Course, Right limb", "Page 1 of 2", "9y 0m");
            assertThat(text(pdf, 2))
                    .contains("INVENTED, Child", "Course, Left limb", "mLDFA", "The latest 10 of 13 films")
                    .contains("01-Feb-2026, 9y 8m", "\u2248 no measurable change", "Decision support");
        }
    }

    @Test
    void saysThatNothingWasReadYet() throws IOException {
        try (var pdf = Loader.loadPDF(ask(surgeon.staff()).body())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(2);
            assertThat(text(pdf, 1)).contains("No film of this side has been read yet.");
        }
    }

    @Test
    void writesThePrintDown() {
        ask(surgeon.staff());
        var prints = network.owner()
                .sql("select count(*) from access_entry where subject = 'course-print' and staff_id = ?")
                .param(surgeon.staff())
                .query(Long.class)
                .single();
        assertThat(prints).isEqualTo(1);
    }

    @Test
    void printsNothingForAnotherSiteOrForThoseWithoutNeed() {
        assertThat(ask(reader.surgeon().staff()).statusCode()).isEqualTo(404);
        var storekeeper = network.staff(surgeon.site().value(), "STOREKEEPER");
        assertThat(ask(storekeeper).statusCode()).isEqualTo(403);
    }

    private HttpResponse<byte[]> ask(UUID staff) {
        return new TestSession(port)
                .signIn(network.login(staff), network.password(staff))
                .bytes("api/course/" + child.value() + "/pdf");
    }

    private static String text(PDDocument pdf, int page) throws IOException {
        var stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(pdf);
    }

    private static void keep(PDDocument pdf, String name) throws IOException {
        var folder = Files.createDirectories(Path.of("target", "pictures"));
        var renderer = new PDFRenderer(pdf);
        for (int page = 0; page < pdf.getNumberOfPages(); page++) {
            ImageIO.write(
                    renderer.renderImageWithDPI(page, DPI),
                    "png",
                    folder.resolve(name + "-" + (page + 1) + ".png").toFile());
        }
    }
}
