package org.espalier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.LocalDate;
import java.util.List;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.film.TestDoor.Sender;
import org.espalier.kit.CourseModel;
import org.espalier.patient.BoneAge;
import org.espalier.patient.BoneAgeMethod;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.DraftService;
import org.espalier.reading.ReadingService;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.reading.TestReader;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.espalier.treatment.TestTreatment;
import org.espalier.treatment.TreatmentService;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class CourseIntegrationTests {

    private static final LocalDate BIRTH = LocalDate.of(2016, 5, 20);

    @Autowired
    TestReader reader;

    @Autowired
    TestNetwork network;

    @Autowired
    CourseService courses;

    @Autowired
    DraftService drafts;

    @Autowired
    ReadingService readings;

    @Autowired
    TreatmentService treatments;

    @Autowired
    ExaminationService examinations;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;

    @BeforeEach
    void child() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, BIRTH);
    }

    @Test
    void isEmptyForAChildWithoutFilms() {
        var sheet = sheet();
        assertThat(sheet.isEmpty()).isTrue();
        assertThat(sheet.films()).isEmpty();
        assertThat(sheet.radiation()).contains("Films taken so far: 0");
    }

    @Test
    void showsOnTheRowOfAPlateHowAReaderSawItsScrews() {
        var femur = TestTreatment.FEMUR;
        var plate = TestTreatment.plate(LocalDate.of(2025, 1, 10), femur, PlateSide.LATERAL, new ImplantId(ids.next()));
        surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), plate));
        var bent = ScrewSeen.asked(Side.RIGHT, ScrewSeen.Plate.DISTAL_FEMUR, ScrewSeen.Screw.METAPHYSIS)
                .withBent(Seen.YES)
                .withExposed(Seen.YES);
        var film = LocalDate.of(2025, 5, 20);
        reader.signedWithScrews(surgeon, reader.film(surgeon, child, film), List.of(bent));
        var row = sheet().chart().rows().stream()
                .filter(one -> one.id().equals("plates-R-FEMUR"))
                .findFirst()
                .orElseThrow();
        assertThat(row.marks()).hasSize(2);
        assertThat(row.marks().getLast().date()).isEqualTo(film);
        assertThat(row.marks().getLast().text())
                .startsWith("Right distal femur, metaphyseal screw: exposed, bent, on the film of 20‑May‑2025");
    }

    @Test
    void joinsWhatWasReadAndJudgesEachChange() {
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2024, 5, 20)));
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2025, 5, 20)));
        reader.film(surgeon, child, LocalDate.of(2025, 9, 1));
        var sheet = sheet();
        assertThat(sheet.chart().quantities().subList(0, 4))
                .extracting(CourseModel.Quantity::id)
                .containsExactly("HKA", "BONY_HKA", "mLDFA", "mMPTA");
        var track = track(sheet, "HKA", Side.RIGHT);
        assertThat(track.points()).hasSize(2);
        assertThat(track.points().getFirst().join()).isFalse();
        var second = track.points().getLast();
        assertThat(second.join()).isTrue();
        assertThat(second.unchanged()).isTrue();
        assertThat(second.error()).isEqualTo(1.39);
        assertThat(second.text())
                .isEqualTo("20‑May‑2025, age 9y 0m: HKA Right 22.0° varus, ±\u00a01.4°. No measurable change since"
                        + " 20‑May‑2024. (Limit 2.5°: reading 2.0°, standing 1.5°, if the knee is straight.)");
        assertThat(sheet.films()).hasSize(3);
        assertThat(sheet.films().getFirst().isRead()).isFalse();
        assertThat(sheet.films().get(1).rows()).anySatisfy(row -> {
            assertThat(row.label()).isEqualTo("mMPTA");
            assertThat(row.left().orElseThrow().text()).isEqualTo("72.0° varus, ±\u00a01.3°");
            assertThat(row.left().orElseThrow().unchanged()).isTrue();
        });
        assertThat(sheet.radiation()).contains("Films taken so far: 3");
    }

    @Test
    void drawsTheBandOnlyWhereANormIsKnownAndNamesItsSource() {
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2024, 5, 20)));
        var lane = sheet().chart().quantities().get(2);
        assertThat(lane.id()).isEqualTo("mLDFA");
        assertThat(lane.bands()).singleElement().satisfies(band -> assertThat(band)
                .extracting(CourseModel.Normal::low, CourseModel.Normal::high)
                .containsOnly(tuple(85.0, 90.0)));
        assertThat(sheet().sources())
                .anyMatch(source -> source.startsWith("mLDFA: ") && source.contains("2021;29:3299"));
    }

    @Test
    void usesTheLatestReadingAndStrikesTheSupersededOne() {
        var film = reader.film(surgeon, child, LocalDate.of(2024, 5, 20));
        var first = reader.signed(surgeon, film);
        var again = surgeon.does(() -> drafts.correct(first));
        surgeon.does(() -> readings.sign(again.id(), 1, "Hip centre was off"));
        var sheet = sheet();
        assertThat(track(sheet, "HKA", Side.LEFT).points()).hasSize(1);
        assertThat(sheet.films().getFirst().readings())
                .extracting(reading -> reading.superseded().orElse("stands"))
                .containsExactly("stands", "Superseded: Hip centre was off");
    }

    @Test
    void laysPlatesProceduresVisitsAndBoneAgesAlongTheFoot() {
        var implant = new ImplantId(ids.next());
        var plate = TestTreatment.plate(LocalDate.of(2025, 6, 10), TestTreatment.TIBIA, PlateSide.LATERAL, implant);
        var screw = Act.of(
                ProcedureKind.METAPHYSEAL_SCREW_OUT, TestTreatment.TIBIA, PlateSide.LATERAL, implant, "one screw", 1);
        surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), plate));
        surgeon.does(() -> treatments.record(
                child, new ProcedureId(ids.next()), TestTreatment.of(LocalDate.of(2026, 5, 4), screw)));
        surgeon.does(() -> {
            examinations.record(
                    child,
                    new FactId(ids.next()),
                    new BoneAge(LocalDate.of(2025, 2, 1), Age.ofYears(9), BoneAgeMethod.HAND_ATLAS));
            return child;
        });
        var rows = sheet().chart().rows();
        assertThat(rows)
                .extracting(CourseModel.Row::label)
                .containsExactly("Right tibia, held", "Procedures", "Visits", "Bone age");
        assertThat(rows.getFirst().marks())
                .extracting(CourseModel.Mark::look)
                .containsExactly(CourseModel.Look.PLATE, CourseModel.Look.PLATE_PARKED);
        assertThat(rows.getFirst().marks().getLast().text())
                .isEqualTo("Since 04‑May‑2026: plate, 2 screws, Right proximal tibia, lateral side."
                        + " Metaphyseal screw out, plate left.");
        assertThat(rows.get(1).marks().getFirst().text())
                .isEqualTo("10‑Jun‑2025: Plate placed – Right proximal tibia, lateral side");
        assertThat(rows.getLast().marks().getFirst().text()).startsWith("01‑Feb‑2025: bone age 9y 0m at age 8y 8m. ");
        assertThat(sheet().events())
                .hasSizeGreaterThanOrEqualTo(6)
                .first()
                .asString()
                .contains("next visit");
    }

    @Test
    void writesTheLookDownOnce() {
        surgeon.does(() -> courses.open(child));
        var looks = network.owner()
                .sql("select count(*) from access_entry where subject = 'course' and staff_id = ?")
                .param(surgeon.staff())
                .query(Long.class)
                .single();
        assertThat(looks).isEqualTo(1);
    }

    @Test
    void showsAnotherSiteNothing() {
        var stranger = reader.surgeon();
        assertThat(stranger.does(() -> courses.open(child))).isEmpty();
    }

    private CourseSheet sheet() {
        return CourseSheet.of(surgeon.does(() -> courses.open(child)).orElseThrow());
    }

    private static CourseModel.Track track(CourseSheet sheet, String quantity, Side side) {
        return sheet.chart().tracks().stream()
                .filter(track -> track.quantity().equals(quantity) && track.side() == side)
                .findFirst()
                .orElseThrow();
    }
}
