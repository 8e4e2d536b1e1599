package org.espalier.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.espalier.treatment.TestTreatment.FEMUR;
import static org.espalier.treatment.TestTreatment.TIBIA;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.espalier.IntegrationTest;
import org.espalier.TestNetwork;
import org.espalier.access.SiteId;
import org.espalier.followup.VisitService;
import org.espalier.patient.ChildData;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.platform.Ids;
import org.espalier.safety.Carrier;
import org.espalier.safety.SafetyNotice;
import org.espalier.safety.SafetyService;
import org.espalier.science.quantity.Sex;
import org.espalier.science.quantity.Side;
import org.espalier.stock.Explant;
import org.espalier.stock.Lot;
import org.espalier.stock.Movement;
import org.espalier.stock.ShelfId;
import org.espalier.stock.ShelfKind;
import org.espalier.stock.StockRefusal;
import org.espalier.stock.StockService;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.espalier.stock.UseService;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class TreatmentStockIntegrationTests {

    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);

    @Autowired
    TestNetwork network;

    @Autowired
    TestStock test;

    @Autowired
    StockService stock;

    @Autowired
    UseService uses;

    @Autowired
    TreatmentService treatments;

    @Autowired
    PatientService patients;

    @Autowired
    VisitService visits;

    @Autowired
    SafetyService safety;

    @Autowired
    RefusingListener listener;

    @Autowired
    Ids ids;

    Stocked here;
    UUID surgeon;
    ChildId child;
    ImplantId plate;
    Lot lotOfPlate;
    Lot one;
    Lot other;
    LocalDate today;

    @BeforeEach
    void aChildAndAStockedHospital() {
        here = test.empty(new SiteId(network.site()));
        surgeon = network.staff(here.site().value(), "SURGEON");
        child = new ChildId(ids.next());
        var data = new ChildData("Traced", "Tara", LocalDate.of(2017, 2, 9), Sex.FEMALE, "T-1");
        network.as(surgeon, () -> patients.register(here.site(), child, data));
        plate = new ImplantId(ids.next());
        lotOfPlate = test.arrive(here, here.plate(), here.store(), "A", FAR, 3);
        one = test.arrive(here, here.screw(), here.tray(), "B", FAR, 4);
        other = test.arrive(here, here.screw(), here.tray(), "C", FAR, 4);
        today = treatment().today();
    }

    @Test
    void takesEachPieceFromItsShelfWithTheRecordAndTellsItsLots() {
        var procedure = record(placed(plate(), screw(), screw()));
        assertThat(on(here.store())).isEqualTo(2);
        assertThat(on(here.tray())).isEqualTo(6);
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.TETHERED);
        var in = treatment().pieces().of(plate).stream().map(PieceIn::piece).toList();
        assertThat(in).extracting(Piece::lotNumbers).containsExactly("A", "B, C", "B, C");
        assertThat(in).extracting(Piece::isOfOneLot).containsExactly(true, false, false);
        assertThat(used(procedure)).hasSize(3);
        assertThat(used(procedure).getFirst().cost()).isPresent();
    }

    @Test
    void tellsTheSameFromLotToChildAndFromChildToLot() {
        var procedure = record(placed(
                plate(),
                screw(),
                Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw", here.tray(), Optional.of(other.id()))));
        var loan = Piece.ofOutside(Piece.Role.SCREW, here.screw().id(), "screw", "LOAN-7", FAR, Piece.Outside.LOAN);
        correct(
                procedure,
                placed(Stream.concat(pieces().stream(), Stream.of(loan)).toArray(Piece[]::new)));
        assertThat(pieces())
                .hasSize(4)
                .allSatisfy(piece -> assertThat(piece.lots()).isNotEmpty().allSatisfy(lot -> {
                    var toChild = network.as(surgeon, () -> uses.ofLot(lot)).stream()
                            .filter(use -> use.movement().equals(piece.movement()))
                            .toList();
                    assertThat(toChild).hasSize(1);
                    assertThat(toChild.getFirst().holder()).isEqualTo(procedure.value());
                    assertThat(toChild.getFirst().certain()).isEqualTo(piece.isOfOneLot());
                }));
        for (var lot : List.of(lotOfPlate, one, other)) {
            var movements = network.as(surgeon, () -> uses.ofLot(lot.id()));
            assertThat(movements).isNotEmpty().allSatisfy(use -> assertThat(pieces())
                    .anySatisfy(piece -> {
                        assertThat(piece.movement()).isEqualTo(use.movement());
                        assertThat(piece.lots()).contains(lot.id());
                    }));
        }
    }

    @Test
    void keepsNeitherProcedureNorStockNorVisitWhenOnePieceIsNotThere() {
        var before = network.as(surgeon, () -> visits.of(child)).open();
        var missing =
                Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw 24 mm", here.store(), Optional.of(one.id()));
        assertThatThrownBy(() -> record(placed(plate(), screw(), missing)))
                .isInstanceOfSatisfying(StockRefused.class, refused -> {
                    assertThat(refused.reason()).isEqualTo(StockRefusal.Reason.SHORT);
                    assertThat(refused.text()).startsWith("screw 24 mm: None is there.");
                });
        assertThat(on(here.store())).isEqualTo(3);
        assertThat(on(here.tray())).isEqualTo(8);
        assertThat(treatment().procedures()).isEmpty();
        assertThat(network.as(surgeon, () -> visits.of(child)).open()).isEqualTo(before);
    }

    @Test
    void leavesTheStockAloneWhenWhatHangsOnTheProcedureRefuses() {
        listener.refuse(child);
        assertThatThrownBy(() -> record(placed(plate(), screw()))).isInstanceOf(IllegalStateException.class);
        assertThat(on(here.store())).isEqualTo(3);
        listener.accept(child);
        record(placed(plate(), screw()));
        assertThat(on(here.store())).isEqualTo(2);
    }

    @Test
    void movesWithACorrectionOnlyWhatItChanges() {
        var procedure = record(placed(plate(), screw(), screw()));
        var kept = pieces();
        correct(procedure, placed(kept.get(0), kept.get(1)));
        assertThat(on(here.store())).isEqualTo(2);
        assertThat(on(here.tray())).isEqualTo(7);
        assertThat(used(procedure)).hasSize(2);
        var all = network.as(surgeon, () -> uses.ofHolder(procedure.value()));
        assertThat(all).hasSize(4);
        assertThat(all.getLast().reverses()).contains(kept.get(2).movement());
        assertBooksAgree();
    }

    @Test
    void takesTheSameAgainFromTheTrayOfThatDayWithACorrection() {
        var procedure = record(placed(screw()));
        correct(procedure, placed(screw(), screw()));
        assertThat(on(here.tray())).isEqualTo(6);
        assertThat(used(procedure)).hasSize(2);
    }

    @Test
    void givesEverythingBackWhenTheProcedureIsWithdrawn() {
        var procedure = record(placed(plate(), screw()));
        var outcome = network.as(
                surgeon, () -> treatments.withdraw(child, procedure, new ProcedureId(ids.next()), "another child’s"));
        assertThat(outcome.isRecorded()).isTrue();
        assertThat(on(here.store())).isEqualTo(3);
        assertThat(on(here.tray())).isEqualTo(8);
        assertThat(used(procedure)).isEmpty();
        assertThat(network.as(surgeon, () -> uses.ofHolder(procedure.value()))
                        .getLast()
                        .why())
                .hasValueSatisfying(why -> assertThat(why).doesNotContain("another child"));
        assertBooksAgree();
    }

    @Test
    void putsWhatCameOutWhereItWasSaidToGoAndNeverOnAShelf() {
        record(placed(plate(), screw(), screw()));
        var out = record(out(ProcedureKind.PLATE_OUT, Explant.Fate.DISPOSED));
        assertThat(on(shelf(ShelfKind.DISPOSED))).isEqualTo(3);
        assertThat(treatment().pieces().in()).isEmpty();
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.RELEASED);
        correct(out, out(ProcedureKind.PLATE_OUT, Explant.Fate.KEPT));
        assertThat(on(shelf(ShelfKind.DISPOSED))).isZero();
        assertThat(on(shelf(ShelfKind.KEPT))).isEqualTo(3);
        assertThat(on(here.store())).isEqualTo(2);
        assertThat(on(here.tray())).isEqualTo(6);
        assertBooksAgree();
    }

    @Test
    void movesNothingOfWhichItIsNotRecordedWhereItWent() {
        record(placed(plate(), screw()));
        var out = record(out(ProcedureKind.PLATE_OUT, null));
        assertThat(network.as(surgeon, () -> uses.takenOutBy(out.value()))).isEmpty();
        assertThat(treatment().pieces().out()).hasSize(2).allSatisfy(piece -> assertThat(piece.fate())
                .isNull());
    }

    @Test
    void tellsAfterOneScrewCameOutThatWhatIsLeftIsOneOfTheLots() {
        record(placed(
                plate(),
                Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw", here.tray(), Optional.of(one.id())),
                Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw", here.tray(), Optional.of(other.id()))));
        record(out(ProcedureKind.METAPHYSEAL_SCREW_OUT, Explant.Fate.ANALYSIS));
        assertThat(pieces()).extracting(Piece::lotNumbers).containsExactly("A", "B, C");
        assertThat(on(shelf(ShelfKind.ANALYSIS))).isEqualTo(1);
        assertThat(treatment().physis(FEMUR).orElseThrow().state()).isEqualTo(PhysisState.PARKED);
    }

    @Test
    void takesOutTheScrewOfItsEndWhenTheEndsWereSaid() {
        record(placed(
                plate(),
                Piece.ofShelf(
                        Piece.Role.EPIPHYSEAL_SCREW, here.screw().id(), "screw", here.tray(), Optional.of(one.id())),
                Piece.ofShelf(
                        Piece.Role.METAPHYSEAL_SCREW,
                        here.screw().id(),
                        "screw",
                        here.tray(),
                        Optional.of(other.id()))));
        record(out(ProcedureKind.METAPHYSEAL_SCREW_OUT, null));
        assertThat(pieces()).extracting(Piece::lotNumbers).containsExactly("A", "B");
        assertThat(treatment().pieces().out().getFirst().piece().lots()).containsExactly(other.id());
    }

    @Test
    void isFoundByASafetyNoticeAndIsFormerOnceItCameOutWhereverItWent() {
        record(placed(plate(), screw()));
        assertThat(certainty(lotOfPlate)).isEqualTo(Carrier.Certainty.CERTAIN);
        assertThat(certainty(one)).isEqualTo(Carrier.Certainty.POSSIBLE);
        record(out(ProcedureKind.PLATE_OUT, null));
        assertThat(certainty(lotOfPlate)).isEqualTo(Carrier.Certainty.FORMER);
    }

    @Test
    void takesOutWhatHoldsACutBoneAndNothingElse() {
        var stored = test.arrive(here, here.screw(), here.store(), "D", FAR, 2);
        record(placed(screw()));
        record(onLimb(ProcedureKind.OSTEOTOMY, TIBIA, List.of(plate())));
        record(onLimb(ProcedureKind.DEROTATION, null, List.of(ofStore(stored))));
        var out = record(onLimb(ProcedureKind.FIXATION_OUT, TIBIA, List.of(), Explant.Fate.DISPOSED));
        assertThat(on(shelf(ShelfKind.DISPOSED))).isEqualTo(1);
        assertThat(certainty(lotOfPlate)).isEqualTo(Carrier.Certainty.FORMER);
        assertThat(certainty(stored))
                .as("it was not said at which place it lay")
                .isEqualTo(Carrier.Certainty.POSSIBLE);
        assertThat(treatment().pieces().fixation(ProcedureKind.FIXATION_OUT, Side.RIGHT))
                .singleElement()
                .matches(PieceIn::maybeOut);
        correct(out, onLimb(ProcedureKind.FIXATION_OUT, null, List.of(), Explant.Fate.KEPT));
        assertThat(on(shelf(ShelfKind.DISPOSED))).isZero();
        assertThat(on(shelf(ShelfKind.KEPT))).isEqualTo(2);
        assertThat(treatment().pieces().in())
                .hasSize(1)
                .isEqualTo(treatment().pieces().of(plate));
        assertBooksAgree();
    }

    @Test
    void takesOffAFrameWithItsPiecesAndLeavesWhatHoldsTheBoneInside() {
        var stored = test.arrive(here, here.screw(), here.store(), "D", FAR, 2);
        record(onLimb(ProcedureKind.FRAME_ON, null, List.of(plate())));
        record(onLimb(ProcedureKind.OSTEOTOMY, TIBIA, List.of(ofStore(stored))));
        record(onLimb(ProcedureKind.FRAME_OFF, null, List.of(), Explant.Fate.DISPOSED));
        assertThat(on(here.store())).as("never back on a shelf").isEqualTo(3);
        assertThat(on(shelf(ShelfKind.DISPOSED))).isEqualTo(1);
        assertThat(certainty(lotOfPlate)).isEqualTo(Carrier.Certainty.FORMER);
        assertThat(treatment().pieces().in()).extracting(PieceIn::by).containsExactly(ProcedureKind.OSTEOTOMY);
    }

    @Test
    void isFoundByASafetyNoticeWhenItWasPlacedElsewhere() {
        var known = Piece.ofOutside(Piece.Role.BODY, here.plate().id(), "plate", "A", FAR, Piece.Outside.OTHER);
        var placed = placed(known);
        record(new ProcedureData(today, true, null, null, placed.acts(), placed.next()));
        assertThat(on(here.store())).as("nothing was taken here").isEqualTo(3);
        assertThat(certainty(lotOfPlate)).isEqualTo(Carrier.Certainty.CERTAIN);
    }

    @Test
    void takesNothingFromShelvesForWhatWasDoneElsewhere() {
        var placed = placed(plate());
        var elsewhere = new ProcedureData(today, true, null, null, placed.acts(), placed.next());
        assertThatThrownBy(() -> record(elsewhere)).isInstanceOf(IllegalArgumentException.class);
        assertThat(on(here.store())).isEqualTo(3);
    }

    /** By a notice for the lot, opened, or looked at again. */
    private Carrier.Certainty certainty(Lot lot) {
        var notice = network.as(surgeon, () -> safety.all()).stream()
                .filter(open -> open.lot().equals(lot.id()))
                .map(SafetyNotice::id)
                .findFirst()
                .orElseGet(ids::next);
        return network.as(surgeon, () -> {
            safety.open(notice, lot.id(), here.site(), "maker, notice 7", "threads may strip");
            safety.lookAgain(notice);
            return safety.carriers(notice).getFirst().certainty();
        });
    }

    private Piece plate() {
        return Piece.ofShelf(
                Piece.Role.BODY, here.plate().id(), "plate 12 mm", here.store(), Optional.of(lotOfPlate.id()));
    }

    private Piece screw() {
        return Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw 24 mm", here.tray(), Optional.empty());
    }

    private ProcedureData placed(Piece... pieces) {
        var act = Act.of(ProcedureKind.PLATE_PLACED, FEMUR, PlateSide.LATERAL, plate, "plate, screws", pieces.length);
        return TestTreatment.of(today, act.withPieces(List.of(pieces)));
    }

    private Piece ofStore(Lot lot) {
        return Piece.ofShelf(Piece.Role.SCREW, here.screw().id(), "screw", here.store(), Optional.of(lot.id()));
    }

    private ProcedureData onLimb(ProcedureKind kind, @Nullable PhysisKey physis, List<Piece> pieces) {
        var act = physis == null
                ? Act.ofLimb(kind, Side.RIGHT, "fixation", pieces.size())
                : Act.of(kind, physis, null, null, "fixation", pieces.size());
        return TestTreatment.of(today, act.withPieces(pieces));
    }

    private ProcedureData onLimb(
            ProcedureKind kind, @Nullable PhysisKey physis, List<Piece> pieces, Explant.Fate fate) {
        var data = onLimb(kind, physis, pieces);
        return data.withActs(data.acts().stream().map(act -> act.withFate(fate)).toList());
    }

    private ProcedureData out(ProcedureKind kind, Explant.@Nullable Fate fate) {
        var act = Act.of(kind, FEMUR, PlateSide.LATERAL, plate, "out", 1);
        return TestTreatment.of(today, fate == null ? act : act.withFate(fate));
    }

    private ProcedureId record(ProcedureData data) {
        var id = new ProcedureId(ids.next());
        assertThat(network.as(surgeon, () -> treatments.record(child, id, data)).isRecorded())
                .isTrue();
        return id;
    }

    private void correct(ProcedureId earlier, ProcedureData data) {
        var id = new ProcedureId(ids.next());
        var outcome = network.as(surgeon, () -> treatments.correct(child, earlier, id, data, "typed wrongly"));
        assertThat(outcome.isRecorded()).isTrue();
    }

    private Treatment treatment() {
        return network.as(surgeon, () -> treatments.of(child));
    }

    private List<Piece> pieces() {
        return treatment().pieces().of(plate).stream().map(PieceIn::piece).toList();
    }

    private List<Movement> used(ProcedureId procedure) {
        return network.as(surgeon, () -> uses.usedFor(procedure.value()));
    }

    private int on(ShelfId shelf) {
        return test.as(here, () -> stock.on(shelf)).stream()
                .mapToInt(line -> line.quantity())
                .sum();
    }

    private ShelfId shelf(ShelfKind kind) {
        return test.as(here, () -> stock.shelves(here.site())).stream()
                .filter(shelf -> shelf.kind() == kind)
                .findFirst()
                .orElseThrow()
                .id();
    }

    private void assertBooksAgree() {
        assertThat(test.as(here, () -> stock.check(here.site()))).isEmpty();
    }
}
