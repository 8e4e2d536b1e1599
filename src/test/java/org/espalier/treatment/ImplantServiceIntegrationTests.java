package org.espalier.treatment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.treatment.TestTreatment.FEMUR;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.espalier.IntegrationTest;
import org.espalier.film.TestDoor.Sender;
import org.espalier.patient.ChildId;
import org.espalier.patient.FactId;
import org.espalier.platform.Ids;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.reading.TestReader;
import org.espalier.stock.CatalogueService;
import org.espalier.stock.Magnet;
import org.espalier.stock.Product;
import org.espalier.stock.ProductData;
import org.espalier.stock.TestStock;
import org.espalier.stock.TestStock.Stocked;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@IntegrationTest
class ImplantServiceIntegrationTests {

    private static final LocalDate PLACED = LocalDate.of(2025, 6, 10);
    private static final LocalDate FILM = LocalDate.of(2025, 9, 10);
    private static final LocalDate FAR = LocalDate.of(2036, 1, 31);

    @Autowired
    TestReader reader;

    @Autowired
    TestStock test;

    @Autowired
    CatalogueService catalogue;

    @Autowired
    TreatmentService treatments;

    @Autowired
    TreatmentFactService facts;

    @Autowired
    ImplantService implants;

    @Autowired
    Ids ids;

    Sender surgeon;
    ChildId child;

    @BeforeEach
    void aChild() {
        surgeon = reader.surgeon();
        child = reader.child(surgeon, LocalDate.of(2017, 3, 2));
    }

    @Test
    void tellsHowTheLatestReadingSawEachScrew() {
        place(PlateSide.LATERAL, List.of());
        read(FILM.minusDays(60), Seen.NO, Seen.NO);
        read(FILM, Seen.YES, Seen.YES);
        var implant = implants().getFirst();
        assertThat(implant.sightings()).hasSize(2);
        var screw = implant.sightings().getFirst();
        assertThat(screw.screw()).isEqualTo(Screw.METAPHYSEAL);
        assertThat(screw.filmOn()).isEqualTo(FILM);
        assertThat(screw.signs()).containsExactlyInAnyOrder(ScrewSighting.Sign.EXPOSED, ScrewSighting.Sign.BROKEN);
        assertThat(implant.sightings().getLast().signs()).isEmpty();
        assertThat(implant.sightings().getLast().complete()).isFalse();
        assertThat(implant.shared()).isFalse();
    }

    @Test
    void leavesThePhysisTetheredUntilSomebodyWritesDownThatAScrewBroke() {
        place(PlateSide.LATERAL, List.of());
        read(FILM, Seen.NO, Seen.YES);
        assertThat(implants().getFirst().isBrokenByReadingAlone()).isTrue();
        assertThat(surgeon.does(() -> treatments.of(child))
                        .physis(FEMUR)
                        .orElseThrow()
                        .state())
                .isEqualTo(PhysisState.TETHERED);
    }

    @Test
    void isInDoubtByAReadingUntilTheScrewIsExchangedOrFoundSound() {
        var plate = place(PlateSide.LATERAL, List.of());
        read(FILM, Seen.NO, Seen.YES);
        assertThat(implants().getFirst().isInDoubt()).isTrue();
        var sound = new ImplantFinding(
                FILM.plusDays(3),
                plate,
                ImplantFinding.Part.METAPHYSEAL_SCREW,
                ImplantFinding.Seen.SOUND,
                null,
                "an artefact");
        surgeon.does(() -> facts.record(child, new FactId(ids.next()), sound));
        assertThat(implants().getFirst().isInDoubt()).isFalse();
        read(FILM.plusDays(5), Seen.NO, Seen.YES);
        assertThat(implants().getFirst().isInDoubt()).isTrue();
        var exchanged = Act.of(
                ProcedureKind.METAPHYSEAL_SCREW_EXCHANGED, FEMUR, PlateSide.LATERAL, plate, "screw exchanged", 1);
        var data = TestTreatment.of(FILM.plusDays(9), exchanged);
        assertThat(surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data))
                        .isRecorded())
                .isTrue();
        assertThat(implants().getFirst().isInDoubt()).isFalse();
        assertThat(implants().getFirst().sightings())
                .as("the screw on the film is no longer in")
                .extracting(ScrewSighting::screw)
                .containsExactly(Screw.EPIPHYSEAL);
    }

    @Test
    void saysThatEitherOfTwoPlatesMayBeMeant() {
        place(PlateSide.LATERAL, List.of());
        place(PlateSide.MEDIAL, List.of());
        read(FILM, Seen.YES, Seen.NO);
        assertThat(implants()).hasSize(2).allMatch(ImplantInPlace::shared);
    }

    @Test
    void saysNothingOfScrewsSeenBeforeThePlateWasPlaced() {
        place(PlateSide.LATERAL, List.of());
        read(PLACED.minusDays(9), Seen.YES, Seen.NO);
        assertThat(implants().getFirst().sightings()).isEmpty();
    }

    @Test
    void isInAScannerWhatItsLeastSafePieceIs() {
        var here = test.empty(surgeon.site());
        var safe = product(here, Magnet.SAFE);
        var conditional = product(here, Magnet.CONDITIONAL);
        var plate = place(PlateSide.LATERAL, List.of(piece(here, safe), piece(here, conditional)));
        assertThat(implants().getFirst().magnet()).isEqualTo(Magnet.CONDITIONAL);
        var unknown = Piece.ofOutside(Piece.Role.SCREW, null, "old screw", null, null, Piece.Outside.EMERGENCY);
        place(PlateSide.MEDIAL, List.of(piece(here, safe), unknown));
        assertThat(implants())
                .extracting(ImplantInPlace::magnet)
                .containsExactlyInAnyOrder(Magnet.CONDITIONAL, Magnet.NOT_KNOWN);
        assertThat(implants().getFirst().tether().implant()).contains(plate);
    }

    @Test
    void knowsNothingOfAScannerForAPlateWhosePiecesNobodyRecorded() {
        place(PlateSide.LATERAL, List.of());
        assertThat(implants().getFirst().magnet()).isEqualTo(Magnet.NOT_KNOWN);
    }

    private List<ImplantInPlace> implants() {
        return surgeon.does(() -> implants.of(child));
    }

    private ImplantId place(PlateSide side, List<Piece> pieces) {
        var plate = new ImplantId(ids.next());
        var act = Act.of(ProcedureKind.PLATE_PLACED, FEMUR, side, plate, "plate, 2 screws", 3)
                .withPieces(pieces);
        var data = TestTreatment.of(PLACED, act);
        assertThat(surgeon.does(() -> treatments.record(child, new ProcedureId(ids.next()), data))
                        .isRecorded())
                .isTrue();
        return plate;
    }

    private void read(LocalDate day, Seen exposed, Seen broken) {
        var plate = ScrewSeen.Plate.DISTAL_FEMUR;
        var screw = ScrewSeen.asked(FEMUR.side(), plate, ScrewSeen.Screw.METAPHYSIS)
                .withExposed(exposed)
                .withBent(Seen.NO)
                .withBroken(broken)
                .withLoose(Seen.NO);
        var other = ScrewSeen.asked(FEMUR.side(), plate, ScrewSeen.Screw.EPIPHYSIS);
        reader.signedWithScrews(surgeon, reader.film(surgeon, child, day), List.of(screw, other));
    }

    private Product product(Stocked here, Magnet magnet) {
        var product = test.product(here, org.espalier.stock.ProductKind.SCREW);
        var data = product.data();
        test.as(here, () -> {
            catalogue.change(
                    product,
                    new ProductData(
                            data.kind(),
                            data.name(),
                            data.reference(),
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            magnet,
                            data.traced(),
                            data.sterile()));
            return product;
        });
        test.arrive(here, product, here.store(), "L", FAR, 5);
        return product;
    }

    private Piece piece(Stocked here, Product product) {
        var lot = test.as(here, () -> catalogue.lots(product.id())).getFirst();
        return Piece.ofShelf(Piece.Role.SCREW, product.id(), "screw", here.store(), Optional.of(lot.id()));
    }
}
