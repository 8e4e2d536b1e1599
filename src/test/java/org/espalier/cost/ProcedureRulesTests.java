package org.espalier.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.espalier.cost.TestCost.allowance;
import static org.espalier.cost.TestCost.number;
import static org.espalier.cost.TestCost.onceEach;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.science.quantity.Side;
import org.espalier.treatment.Act;
import org.espalier.treatment.ImplantId;
import org.espalier.treatment.MeasuredMinutes;
import org.espalier.treatment.NextLook;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.PlateSide;
import org.espalier.treatment.Procedure;
import org.espalier.treatment.ProcedureData;
import org.espalier.treatment.ProcedureId;
import org.espalier.treatment.ProcedureKind;
import org.junit.jupiter.api.Test;

/** What follows from a procedure by rule. */
class ProcedureRulesTests {

    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final UUID ID = new UUID(0, 9);
    private static final AllowanceBook AGREED = new AllowanceBook(List.of(
            onceEach(TariffItem.THEATRE_MINUTE, "20"),
            allowance(ProcedureKind.PLATE_PLACED, TariffItem.THEATRE_MINUTE, "25"),
            allowance(ProcedureKind.PLATE_PLACED, TariffItem.BED_DAY, "1"),
            allowance(ProcedureKind.OSTEOTOMY, TariffItem.THEATRE_MINUTE, "90"),
            allowance(ProcedureKind.OSTEOTOMY, TariffItem.BED_DAY, "4")));

    private static Act plate(Side side, Bone bone, BoneEnd end) {
        return Act.of(
                ProcedureKind.PLATE_PLACED,
                new PhysisKey(side, bone, end),
                PlateSide.LATERAL,
                new ImplantId(UUID.randomUUID()),
                "plate, 2 screws",
                3);
    }

    private static ProcedureData data(LocalDate on, boolean elsewhere, Act... acts) {
        return new ProcedureData(on, elsewhere, null, null, List.of(acts), new NextLook(on.plusDays(84), "film"));
    }

    private static List<Claim> claims(List<Procedure> standing, List<Piece> pieces, ProcedureData data) {
        return new ProcedureRules(standing, AGREED).of(new ProcedureRules.Done(ID, data.on(), data, pieces));
    }

    private static List<String> told(List<Claim> claims) {
        return claims.stream()
                .map(claim -> claim.rule() + " " + claim.item() + " " + claim.side() + " "
                        + claim.quantity().stripTrailingZeros().toPlainString())
                .toList();
    }

    @Test
    void whatWasMeasuredIsChargedInPlaceOfWhatWasAgreedAndNothingElse() {
        var operation = data(DAY, false, plate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL));
        var measured = operation.withMeasured(new MeasuredMinutes(38, null));
        assertThat(told(claims(List.of(), List.of(), measured)))
                .containsExactlyInAnyOrder(
                        "MEASURED THEATRE_MINUTE RIGHT 38",
                        "LONGEST BED_DAY RIGHT 1",
                        "PIECES_COUNTED IMPLANT RIGHT 3");
        var anaesthesia = operation.withMeasured(new MeasuredMinutes(null, 55));
        assertThat(told(claims(List.of(), List.of(), anaesthesia)))
                .as("theatre as agreed, for nobody measured that")
                .contains(
                        "MEASURED ANAESTHESIA_MINUTE RIGHT 55",
                        "EACH_OPERATION THEATRE_MINUTE RIGHT 20",
                        "EACH_ACT THEATRE_MINUTE RIGHT 25");
    }

    @Test
    void twoPlatesOnOneLimbTakeTheTimeOfTwoAndOneNight() {
        var data = data(
                DAY,
                false,
                plate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL),
                plate(Side.RIGHT, Bone.TIBIA, BoneEnd.PROXIMAL));
        assertThat(told(claims(List.of(), List.of(), data)))
                .containsExactlyInAnyOrder(
                        "EACH_OPERATION THEATRE_MINUTE RIGHT 20",
                        "EACH_ACT THEATRE_MINUTE RIGHT 50",
                        "LONGEST BED_DAY RIGHT 1",
                        "PIECES_COUNTED IMPLANT RIGHT 6");
    }

    @Test
    void whatServesBothLimbsIsOfNeitherAlone() {
        var data = data(
                DAY,
                false,
                plate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL),
                Act.ofLimb(ProcedureKind.OSTEOTOMY, Side.LEFT, "none", 0));
        assertThat(told(claims(List.of(), List.of(), data)))
                .containsExactlyInAnyOrder(
                        "EACH_OPERATION THEATRE_MINUTE null 20",
                        "EACH_ACT THEATRE_MINUTE RIGHT 25",
                        "EACH_ACT THEATRE_MINUTE LEFT 90",
                        "LONGEST BED_DAY null 4",
                        "PIECES_COUNTED IMPLANT RIGHT 3");
    }

    @Test
    void whatTheStockTookGoesBeforeWhatWasCounted() {
        var data = data(DAY, false, plate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL));
        var pieces =
                List.of(new Piece(new UUID(1, 1), 1, Optional.empty()), new Piece(new UUID(1, 2), 2, Optional.empty()));
        assertThat(claims(List.of(), pieces, data).stream().filter(claim -> claim.item() == TariffItem.IMPLANT))
                .extracting(Claim::rule, Claim::quantity)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(ChargeRule.LOT_COST, number("1")),
                        org.assertj.core.groups.Tuple.tuple(ChargeRule.LOT_COST, number("2")));
    }

    @Test
    void whatWasDoneElsewhereCostsNothingHere() {
        var data = data(DAY, true, plate(Side.RIGHT, Bone.FEMUR, BoneEnd.DISTAL));
        assertThat(claims(List.of(), List.of(), data)).isEmpty();
    }

    @Test
    void aCastIsNoOperation() {
        var data = data(DAY, false, Act.ofLimb(ProcedureKind.CAST_ON, Side.LEFT, "none", 0));
        assertThat(told(claims(List.of(), List.of(), data))).containsExactly("CAST_PUT_ON CAST LEFT 1");
    }

    /** Put on 2 March, off 30 April: 59 days, for the last one is not paid. */
    @Test
    void aFrameIsPaidFromTheDayItIsPutOnToTheDayBeforeItComesOff() {
        var on = standing(data(DAY, false, Act.ofLimb(ProcedureKind.FRAME_ON, Side.LEFT, "frame", 1)));
        var other = standing(data(DAY.plusDays(9), false, Act.ofLimb(ProcedureKind.FRAME_ON, Side.RIGHT, "frame", 1)));
        var off = data(LocalDate.of(2026, 4, 30), false, Act.ofLimb(ProcedureKind.FRAME_OFF, Side.LEFT, "frame", 1));
        var hire = claims(List.of(on, other), List.of(), off).stream()
                .filter(claim -> claim.rule() == ChargeRule.FRAME_DAYS)
                .toList();
        assertThat(hire).singleElement().satisfies(claim -> {
            assertThat(claim.on()).isEqualTo(DAY);
            assertThat(claim.quantity()).isEqualTo(number("59"));
            assertThat(claim.side()).isEqualTo(Side.LEFT);
        });
    }

    @Test
    void aPathwayIsToldFromWhatWasDoneInItsOrder() {
        assertThat(pathway()).isEqualTo(Pathway.WATCH);
        assertThat(pathway(ProcedureKind.CAST_ON, ProcedureKind.BRACE_ON)).isEqualTo(Pathway.BRACE);
        assertThat(pathway(ProcedureKind.PLATE_PLACED, ProcedureKind.PLATE_OUT)).isEqualTo(Pathway.GUIDED_GROWTH);
        assertThat(pathway(ProcedureKind.OSTEOTOMY)).isEqualTo(Pathway.OSTEOTOMY);
        assertThat(pathway(ProcedureKind.OSTEOTOMY, ProcedureKind.FRAME_ON)).isEqualTo(Pathway.FRAME);
        assertThat(pathway(ProcedureKind.PLATE_PLACED, ProcedureKind.OSTEOTOMY)).isEqualTo(Pathway.SALVAGE_AFTER);
        assertThat(pathway(ProcedureKind.OSTEOTOMY, ProcedureKind.PLATE_PLACED)).isEqualTo(Pathway.OSTEOTOMY);
    }

    private static Pathway pathway(ProcedureKind... done) {
        return Pathway.of(Arrays.asList(done));
    }

    private static Procedure standing(ProcedureData data) {
        return new Procedure(
                new ProcedureId(UUID.randomUUID()),
                new SiteId(new UUID(0, 1)),
                data.on(),
                Optional.of(data),
                null,
                Instant.EPOCH,
                Optional.empty(),
                null);
    }
}
