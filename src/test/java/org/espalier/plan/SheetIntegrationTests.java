package org.espalier.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.TestSession;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.Bone;
import org.espalier.patient.ChildId;
import org.espalier.patient.ExaminationService;
import org.espalier.patient.FactId;
import org.espalier.patient.TibiaVaraStage;
import org.espalier.prognosis.TestCourse;
import org.espalier.reading.TestReader;
import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;

@IntegrationTest
class SheetIntegrationTests {

    @LocalServerPort
    int port;

    @Autowired
    SheetService sheets;

    @Autowired
    CutService cuts;

    @Autowired
    ExaminationService examinations;

    @Autowired
    TestReader reader;

    @Autowired
    TestCourse courses;

    @Autowired
    TestNetwork network;

    Sender surgeon;

    @BeforeEach
    void surgeon() {
        surgeon = reader.surgeon();
    }

    private String words(ChildId child, SheetKind kind, Map<String, String> inputs) {
        var sheet = surgeon.does(() -> sheets.sheet(child, Side.RIGHT, kind, new SheetInputs(inputs)))
                .orElseThrow();
        return sheet.parts().stream().flatMap(SheetIntegrationTests::words).collect(Collectors.joining("\n"));
    }

    private static Stream<String> words(Sheet.Part part) {
        return switch (part) {
            case Sheet.Facts(var heading, var facts) ->
                Stream.concat(Stream.of(heading), facts.stream().map(fact -> fact.name() + ": " + fact.value()));
            case Sheet.Table(var heading, var head, var rows) ->
                Stream.concat(Stream.of(heading), rows.stream().map(row -> String.join(" | ", row)));
            case Sheet.Choices(var heading, var options) ->
                Stream.concat(
                        Stream.of(heading), options.stream().flatMap(option -> Stream.of(OptionCells.Column.values())
                                .flatMap(column -> option.of(column).stream())));
            case Sheet.Note(var text) -> Stream.of(text);
            case Sheet.Drawing(var heading, var inWords, var draw) -> Stream.of(heading, inWords);
            case Sheet.Paper(var drawing) -> Stream.of(drawing.heading(), drawing.inWords());
            case Sheet.Offer(var heading, var numbers) ->
                Stream.concat(Stream.of(heading), numbers.stream().map(Sheet.Offered::words));
        };
    }

    @ParameterizedTest
    @EnumSource(SheetKind.class)
    void everySheetStatesItsCautionsAndNamesNoDoseAndNoProduct(SheetKind kind) {
        var child = courses.underWay(surgeon);
        var sheet = surgeon.does(() -> sheets.sheet(child, Side.RIGHT, kind, SheetInputs.NONE))
                .orElseThrow();
        assertThat(sheet.cautions()).isNotEmpty();
        assertThat(sheet.cautions().getFirst()).contains("Decision support").containsIgnoringCase("local protocol");
        assertThat(words(child, kind, Map.of())).doesNotContainPattern("(?i)\\bmg\\b|\\bIU\\b|\u00ae|\u2122");
    }

    /** Expected figures: the derived vectors of the reference for 20 degrees of varus and 25 of internal torsion. */
    @Test
    void plansASingleObliqueCutByItsVectors() {
        var child = courses.underWay(surgeon);
        var typed = Map.of(
                "varus",
                "20",
                "procurvatum",
                "0",
                "torsion",
                "25",
                "fragment",
                "PROXIMAL",
                "width",
                "40",
                "diameter",
                "25",
                "below",
                "15");
        var words = words(child, SheetKind.OSTEOTOMY, typed);
        assertThat(words)
                .contains("50.8\u00b0 to the shaft, 39.2\u00b0 to the plane across it")
                .contains("10.0\u00b0, falls towards lateral")
                .contains("38.5\u00b0, rises towards the back")
                .contains("31.9\u00b0, foot outwards")
                .contains("15 mm below the tubercle")
                .contains("inclination 5\u00b0 steeper | 1.9\u00b0 varus | 1.2\u00b0 recurvatum | 1.6\u00b0 external")
                .contains("turned 5\u00b0 further | 3.1\u00b0 valgus | 0.8\u00b0 procurvatum | 3.9\u00b0 external");
    }

    /** 10 degrees over 45 mm by each formula: the table of the reference. */
    @Test
    void namesEachFormulaOfAWedgeAndRefusesAMillimetreForADegree() {
        var child = courses.underWay(surgeon);
        var words = words(
                child, SheetKind.OSTEOTOMY, Map.of("varus", "10", "procurvatum", "0", "torsion", "0", "width", "45"));
        assertThat(words)
                .contains("2 w sin(\u03b8/2) | 7.8 mm")
                .contains("w tan \u03b8 | 7.9 mm")
                .contains("2 w tan(\u03b8/2) | 7.9 mm")
                .contains("not offered")
                .contains("which fragment was true on the film");
        assertThat(words(child, SheetKind.OSTEOTOMY, Map.of("varus", "10")))
                .contains("What was not measured is not taken for 0");
    }

    @Test
    void setsGrowthAgainstDegreesForBothPhysesOfBothLimbs() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 3)));
        var words = words(child, SheetKind.GROWTH, Map.of());
        assertThat(words)
                .contains("01‑Dec‑2026 |", "01‑Jan‑2027 |", "01‑Feb‑2027 |")
                .contains("Growth left: By mean lengths by age")
                .contains("By multiplier")
                .contains("Growth needed: 15.0\u00b0")
                .contains("lateral side, against varus")
                .contains("Left proximal tibia")
                .contains("Type core diameter");
        assertThat(words(
                        child,
                        SheetKind.GROWTH,
                        Map.of("core", "3.1", "bore", "0", "material", "STEEL", "exposed", "2")))
                .contains("as typed | 2.0 mm | 1.6 to")
                .contains("no chance of breakage");
    }

    /** The figures of each paper as they stand in the tables of norms and cut-offs. */
    @Test
    void holdsABowAgainstTheChosenStudyAndEachCutOff() {
        var child = courses.youngBow(surgeon);
        assertThat(words(child, SheetKind.BOW, Map.of()))
                .contains("No study is chosen for the course of the age")
                .doesNotContain("the course of the age by the chosen study");
        var words = words(child, SheetKind.BOW, Map.of("norm", "salenius-1975.ANATOMIC_FILM.TIBIOFEMORAL"));
        assertThat(words)
                .contains("Angle of thigh and leg: the course of the age by the chosen study")
                .contains("By Salenius and Vankka", "from memory, not checked")
                .contains("8.9\u00b0 varus on 03‑Aug‑2026, at 21m")
                .contains("1.3 SD towards varus")
                .contains("%DT > 50 under 4 years (from 88\u00b0 and 87\u00b0) | beyond it: called tibia vara | not"
                        + " published")
                .contains("MDA, mid-shaft line | 12.3\u00b0 varus on 03‑Aug‑2026")
                .contains("19.5 % of bows that straightened lie above it, 12.2 % of tibia vara below it")
                .contains("MDA > 11 | beyond it: called tibia vara | 2 % of bows that straightened were called so too"
                        + " (1 of 56 limbs)")
                .contains("MDA > 13 | not beyond it: called a bow that straightens | 23 % of tibia vara were called so"
                        + " too | 0.26 |")
                .contains("%DT, from 90\u00b0 and 90\u00b0 | no share")
                .contains("Right HKA 10.0\u00b0 varus on 03‑Aug‑2026; Left HKA 10.0\u00b0 varus")
                .contains("Plate not before")
                .contains("8 to 18 degrees at 10 to 18 months");
        assertThat(words(child, SheetKind.BOW, Map.of("norm", "mathew-2013.CLINICAL.TIBIOFEMORAL")))
                .contains("not measured by this method here");
    }

    @Test
    void tellsHowReadersOfTheHospitalAgreeOnAStage() {
        var child = courses.youngBow(surgeon);
        var film = LocalDate.of(2026, 8, 3);
        assertThat(words(child, SheetKind.BOW, Map.of())).contains("No film was given a stage by two readers yet");
        stage(surgeon, child, film, TibiaVaraStage.Stage.II);
        stage(reader.colleague(surgeon), child, film, TibiaVaraStage.Stage.III);
        assertThat(words(child, SheetKind.BOW, Map.of()))
                .contains("readers differ")
                .contains("One film with two readers: 0 alike, 1 one stage apart, 0 further; under 10 films");
    }

    private void stage(Sender reader, ChildId child, LocalDate film, TibiaVaraStage.Stage stage) {
        reader.does(() -> {
            examinations.record(child, new FactId(UUID.randomUUID()), new TibiaVaraStage(film, Side.RIGHT, stage));
            return stage;
        });
    }

    /** 87 less 72 degrees from the front, 8 from the side: the formula of the plane by hand, 16.8 degrees at 27.7. */
    @Test
    void takesTheTruePlaneFromTwoFilms() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signed(surgeon, reader.film(surgeon, child, LocalDate.of(2026, 8, 3)));
        assertThat(words(child, SheetKind.OSTEOTOMY, Map.of()))
                .contains("The tibia 15.0\u00b0 varus: mMPTA 72.0\u00b0 against 87\u00b0; film from the front of"
                        + " 03‑Aug‑2026")
                .contains("No film from the side");
        var earlier = reader.film(surgeon, child, LocalDate.of(2025, 6, 2));
        reader.signedFromTheSide(surgeon, earlier, Side.RIGHT, 5);
        assertThat(words(child, SheetKind.OSTEOTOMY, Map.of()))
                .contains("5.0\u00b0 procurvatum: bend of the shaft 5.0\u00b0; film from the side of 02‑Jun‑2025")
                .contains("Caution: the two films are not of one day. That from the side is of 02‑Jun‑2025, 14m (427"
                        + " days)"
                        + " before that from the front of 03‑Aug‑2026");
        var sameDay = reader.film(surgeon, child, LocalDate.of(2026, 8, 3));
        reader.signedFromTheSide(surgeon, sameDay, Side.RIGHT, 8);
        assertThat(words(
                        child,
                        SheetKind.OSTEOTOMY,
                        Map.of("varus", "15.0", "procurvatum", "8.0", "torsion", "3", "width", "40")))
                .contains("True plane by the readings, tibia: 16.8\u00b0, in a plane 27.7\u00b0")
                .contains("Both films are of 03‑Aug‑2026")
                .contains("From the front: 15.0\u00b0 varus, as read of the tibia on 03‑Aug‑2026")
                .contains("From the side: 8.0\u00b0 procurvatum, as read of the tibia on 03‑Aug‑2026");
    }

    /** Both limbs, tibia and femur, straight and round: the film is on the paper as a picture, with its scale. */
    @Test
    void printsTheFilmBeforeAndAfterTheCut() {
        var child = reader.child(surgeon, TestCourse.BIRTH);
        reader.signedWithShafts(surgeon, reader.wholeFilm(surgeon, child, LocalDate.of(2026, 8, 3)), 0);
        var session = new TestSession(port).signIn(network.login(surgeon.staff()), network.password(surgeon.staff()));
        for (var side : Side.values()) {
            var film = surgeon.does(() -> cuts.film(child, side)).orElseThrow();
            assertThat(film.starts()).hasSize(4);
            for (var start : film.starts()) {
                var cut = start.cut();
                var place = "%s,%s,%s,%s,%s,%s,15,%s"
                        .formatted(cut.x1(), cut.y1(), cut.x2(), cut.y2(), cut.hx(), cut.hy(), start.kind());
                boolean letter = start.bone() == Bone.FEMUR;
                var answer = session.bytes("api/children/" + child.value() + "/plan?sheet=osteotomy&limb=" + side
                        + "&paper=" + (letter ? "LETTER" : "A4") + "&cut=" + place
                        + "&varus=15&procurvatum=10&torsion=25&fragment=PROXIMAL&width=40&radius=40"
                        + "&diameter=25&below=15");
                assertThat(answer.statusCode()).isEqualTo(200);
                var name = "film-%s-%s-%s".formatted(side, start.bone(), start.kind());
                assertThat(SheetPictures.pictures(answer.body())).isEqualTo(3);
                assertThat(SheetPictures.keep(name, answer.body()))
                        .contains("The film of 03-Aug-2026, before and after the cut")
                        .contains("Drawn at 1 : ")
                        .contains(start.bone() == Bone.FEMUR ? "the femur cut" : "the tibia cut")
                        .contains(start.kind() == CutKind.ROUND ? "round about the hinge" : "straight across")
                        .contains("stays inside the hospital")
                        .contains("INVENTED");
            }
        }
    }

    @Test
    void printsEverySheetOnBothPapers() {
        var child = courses.underWay(surgeon);
        var session = new TestSession(port).signIn(network.login(surgeon.staff()), network.password(surgeon.staff()));
        for (var kind : SheetKind.values()) {
            for (var paper : new String[] {"A4", "LETTER"}) {
                var answer = session.bytes("api/children/" + child.value() + "/plan?sheet=" + kind.word()
                        + "&paper=" + paper + "&varus=20&procurvatum=10&torsion=25&fragment=PROXIMAL&width=40"
                        + "&diameter=25&below=15&core=3.1&material=STEEL&exposed=3"
                        + "&norm=akhmedov-2013.MECHANICAL_FILM.HKA&limb=" + (paper.equals("A4") ? "right" : "left"));
                assertThat(answer.statusCode()).isEqualTo(200);
                assertThat(new String(answer.body(), 0, 5, java.nio.charset.StandardCharsets.US_ASCII))
                        .isEqualTo("%PDF-");
                assertThat(answer.headers().firstValue("Content-Disposition").orElse(""))
                        .doesNotContain(child.value().toString());
                assertThat(SheetPictures.keep(kind.word() + "-" + paper, answer.body()))
                        .contains("Decision support for licensed clinicians")
                        .contains("INVENTED");
            }
        }
    }

    @Test
    void cutsTheFilmOfTheReadingThatCounts() {
        var child = courses.underWay(surgeon);
        var film = surgeon.does(() -> cuts.film(child, Side.RIGHT)).orElseThrow();
        assertThat(film.takenOn()).isEqualTo(LocalDate.of(2026, 8, 3));
        var start = film.start();
        var turned = new CutRequest(
                7, Side.RIGHT, start.x1(), start.y1(), start.x2(), start.y2(), start.hx(), start.hy(), 6, null);
        var answer = surgeon.does(() -> cuts.move(film.film(), turned));
        assertThat(answer.seq()).isEqualTo(7);
        assertThat(answer.numbers()).extracting(CutAnswer.Number::label).contains("HKA", "mMPTA");
        var stranger = reader.surgeon();
        assertThat(stranger.does(() -> cuts.film(child, Side.RIGHT))).isEmpty();
        var place =
                "%s,%s,%s,%s,%s,%s,6".formatted(start.x1(), start.y1(), start.x2(), start.y2(), start.hx(), start.hy());
        assertThat(words(child, SheetKind.OSTEOTOMY, Map.of("cut", place)))
                .contains("Film of 03‑Aug‑2026: the tibia cut straight across, what lies below turned 6.0\u00b0"
                        + " outwards");
    }
}
