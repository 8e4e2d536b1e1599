package org.espalier.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.espalier.patient.Bone;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.planning.CutKind;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The limb is the constructed coordinate case C2 (tibia vara, HKA 22.00 degrees); the turned axis is worked out here by
 * elementary geometry, apart from the program's own. Tolerance: a tenth of a degree is promised, 1e-6 is kept.
 */
class FilmCutTests {

    private static final double[] HIP = {0, 0};
    private static final double[] CONDYLES = {(13.91 + 63.21) / 2, (230.94 + 222.55) / 2};
    private static final double[] PLATEAU = {(14.69 + 64.44) / 2, (235.12 + 230.20) / 2};
    private static final double[] ANKLE = {0, 413.38};
    private static final double KEPT = 1e-6;

    /** On a film whose pixels are 0.2 mm across and 0.25 mm down; a right limb lies with lateral on the left. */
    private static FilmCut cut(Side side, double outwards) {
        return cut(film(side, limb(side)), CutKind.STRAIGHT, outwards, new double[] {262, 262}, new double[] {55, 262});
    }

    private static FilmLimb film(Side side, LimbLandmarks limb) {
        return new FilmLimb(
                side, limb, LimbLandmarks.none(), Calibration.ofTagFiducial(PixelScale.of(0.2, 0.25)), true);
    }

    /** @param ends how far down its medial and its lateral end lie */
    private static FilmCut cut(FilmLimb limb, CutKind kind, double outwards, double[] ends, double[] hinge) {
        var side = limb.side();
        return new FilmCut(
                limb,
                kind,
                pixel(side, -20, ends[0]),
                pixel(side, 90, ends[1]),
                pixel(side, hinge[0], hinge[1]),
                Angle.ofDegrees(outwards));
    }

    private static LimbLandmarks limb(Side side) {
        return LimbLandmarks.none()
                .with(Landmark.HIP_CENTRE, pixel(side, HIP[0], HIP[1]))
                .with(Landmark.CONDYLE_MEDIAL, pixel(side, 13.91, 230.94))
                .with(Landmark.CONDYLE_LATERAL, pixel(side, 63.21, 222.55))
                .with(Landmark.PLATEAU_MEDIAL, pixel(side, 14.69, 235.12))
                .with(Landmark.PLATEAU_LATERAL, pixel(side, 64.44, 230.20))
                .with(Landmark.PLAFOND_MEDIAL, pixel(side, -14.65, 410.17))
                .with(Landmark.PLAFOND_LATERAL, pixel(side, 14.65, 416.59));
    }

    /** x lateral, y distal, millimetres. */
    private static PixelPoint pixel(Side side, double x, double y) {
        return new PixelPoint(1000 + (side == Side.RIGHT ? -x : x) / 0.2, 100 + y / 0.25);
    }

    /** HKA, + varus, with the ankle swung outwards about (55, 262). */
    private static double hka(double outwards) {
        double radians = Math.toRadians(outwards);
        double x = ANKLE[0] - 55;
        double y = ANKLE[1] - 262;
        double ankleX = 55 + x * Math.cos(radians) + y * Math.sin(radians);
        double ankleY = 262 - x * Math.sin(radians) + y * Math.cos(radians);
        double femur = Math.atan2(CONDYLES[0] - HIP[0], CONDYLES[1] - HIP[1]);
        double tibia = Math.atan2(ankleX - PLATEAU[0], ankleY - PLATEAU[1]);
        return Math.toDegrees(femur - tibia);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-12, 0, 5, 10, 17.5, 25})
    void redrawsTheAxisAsGeometrySays(double outwards) {
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            var after = cut(side, outwards).numbersAfter().angle(Quantity.HKA).orElseThrow();
            assertThat(after.degrees()).isCloseTo(hka(outwards), within(KEPT));
        }
    }

    @Test
    void beginsAtThePublishedConstruction() {
        assertThat(cut(Side.RIGHT, 0)
                        .numbersBefore()
                        .angle(Quantity.HKA)
                        .orElseThrow()
                        .degrees())
                .isCloseTo(22, within(0.02));
    }

    @Test
    void tellsTheTurnThatBringsTheAxisThroughTheKnee() {
        var turn = cut(Side.LEFT, 0).throughTheKnee().orElseThrow();
        assertThat(turn.degrees()).isPositive();
        var after = cut(Side.LEFT, turn.degrees()).after();
        assertThat(offTheAxis(after)).isCloseTo(0, within(1e-6));
    }

    /** How far the middle of the knee lies off the line from hip to ankle: twice an area, a millionth of it. */
    private static double offTheAxis(LimbLandmarks limb) {
        var hip = limb.point(Landmark.HIP_CENTRE).orElseThrow();
        var knee = FilmLimb.middle(limb, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL)
                .orElseThrow();
        var ankle = FilmLimb.middle(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .orElseThrow();
        double across = (knee.x() - hip.x()) * (ankle.y() - hip.y()) - (knee.y() - hip.y()) * (ankle.x() - hip.x());
        return across / 1e6;
    }

    @Test
    void movesThePictureAsItMovesTheLandmarks() {
        var cut = cut(Side.RIGHT, 10);
        var answer = CutDrawing.answer(cut, 3);
        var m = answer.matrix();
        var ankle = FilmLimb.middle(cut.landmarks(), Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .orElseThrow();
        var moved = FilmLimb.middle(cut.after(), Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .orElseThrow();
        assertThat(m.get(0) * ankle.x() + m.get(2) * ankle.y() + m.get(4)).isCloseTo(moved.x(), within(1e-6));
        assertThat(m.get(1) * ankle.x() + m.get(3) * ankle.y() + m.get(5)).isCloseTo(moved.y(), within(1e-6));
        assertThat(answer.seq()).isEqualTo(3);
        assertThat(answer.part()).hasSize(4);
    }

    @Test
    void leavesTheFemurWhereItIs() {
        var cut = cut(Side.RIGHT, 10);
        assertThat(cut.after().point(Landmark.HIP_CENTRE))
                .isEqualTo(cut.landmarks().point(Landmark.HIP_CENTRE));
        assertThat(cut.after().point(Landmark.CONDYLE_MEDIAL))
                .isEqualTo(cut.landmarks().point(Landmark.CONDYLE_MEDIAL));
    }

    @Test
    void refusesACutAlongTheBone() {
        assertThatThrownBy(() -> new FilmCut(
                        film(Side.RIGHT, LimbLandmarks.none()),
                        CutKind.STRAIGHT,
                        new PixelPoint(10, 10),
                        new PixelPoint(10.5, 900),
                        new PixelPoint(10, 100),
                        Angle.ZERO))
                .hasMessageContaining("ALONG_THE_BONE");
        assertThatThrownBy(() -> cut(
                        film(Side.RIGHT, limb(Side.RIGHT)), CutKind.ROUND, 5, new double[] {262, 262}, new double[] {
                            35, 263
                        }))
                .hasMessageContaining("CENTRE_ON_THE_CUT");
        assertThatThrownBy(() -> new CutRequest(1, Side.RIGHT, 0, 0, 9, 9, 5, 5, 61, null))
                .hasMessageContaining("61");
    }

    /**
     * The knee goes along with a cut of the femur, so the turn is another one than about the same place below the knee.
     */
    @Test
    void tellsTheTurnOfAFemurThatBringsTheAxisThroughTheKnee() {
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            var ends = new double[] {190, 195};
            var hinge = new double[] {30, 192};
            var turn = cut(film(side, limb(side)), CutKind.STRAIGHT, 0, ends, hinge)
                    .throughTheKnee()
                    .orElseThrow();
            var cut = cut(film(side, limb(side)), CutKind.STRAIGHT, turn.degrees(), ends, hinge);
            assertThat(cut.bone()).isEqualTo(Bone.FEMUR);
            assertThat(turn.degrees()).isPositive();
            assertThat(offTheAxis(cut.after())).isCloseTo(0, within(1e-6));
        }
    }

    /**
     * A right femur built upright: hip at the origin, axis and shaft 5.4 degrees apart, bent by so many degrees into
     * varus 200 mm below the hip, the knee line at 87 degrees to the lower axis. Places: lateral, down, in millimetres.
     */
    private static LimbLandmarks femur(Side side, double bend) {
        double radians = Math.toRadians(bend);
        double kneeX = -100 * Math.sin(radians);
        double kneeY = 200 + 100 * Math.cos(radians);
        double line = Math.toRadians(bend - 3);
        double lean = Math.tan(Math.toRadians(5.4));
        return LimbLandmarks.none()
                .with(Landmark.HIP_CENTRE, pixel(side, 0, 0))
                .with(Landmark.FEMUR_SHAFT_PROXIMAL, pixel(side, 30, 60))
                .with(Landmark.FEMUR_SHAFT_DISTAL, pixel(side, 30 - 110 * lean, 170))
                .with(Landmark.CONDYLE_LATERAL, pixel(side, kneeX + 25 * Math.cos(line), kneeY + 25 * Math.sin(line)))
                .with(Landmark.CONDYLE_MEDIAL, pixel(side, kneeX - 25 * Math.cos(line), kneeY - 25 * Math.sin(line)))
                .with(Landmark.PLATEAU_MEDIAL, pixel(side, kneeX - 25, kneeY + 6))
                .with(Landmark.PLATEAU_LATERAL, pixel(side, kneeX + 25, kneeY + 6))
                .with(Landmark.PLAFOND_MEDIAL, pixel(side, kneeX - 15, kneeY + 250))
                .with(Landmark.PLAFOND_LATERAL, pixel(side, kneeX + 15, kneeY + 250));
    }

    /**
     * Worked out from how the femur is built: the bend and its place come back, on either side, for varus and valgus.
     */
    @ParameterizedTest
    @ValueSource(doubles = {-14, -8, 8, 12, 20})
    void findsTheCentreOfABentFemur(double bend) {
        for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
            var cut = cut(
                    film(side, femur(side, bend)), CutKind.STRAIGHT, bend, new double[] {230, 230}, new double[] {0, 200
                    });
            var found = cut.bend().orElseThrow();
            assertThat(found.basis()).isEqualTo(FilmBend.Basis.MEAN_FEMUR);
            assertThat(found.varus().degrees()).isCloseTo(bend, within(KEPT));
            var centre = cut.limb().pixel(found.centre().orElseThrow());
            var built = pixel(side, 0, 200);
            assertThat(centre.x()).isCloseTo(built.x(), within(KEPT));
            assertThat(centre.y()).isCloseTo(built.y(), within(KEPT));
            assertThat(cut.correction().orElseThrow().axesBesideEachOther().millimetres())
                    .isCloseTo(0, within(KEPT));
            assertThat(CutDrawing.answer(cut, 1).lines().stream().map(CutAnswer.Line::kind))
                    .contains("bend", "level");
            assertThat(String.join(" ", CutWords.notes(cut)))
                    .contains("Angulation of the femur")
                    .contains("cut elsewhere: the bone ends shift at the cut")
                    .contains("mean of adults");
        }
    }

    /** The other femur is the measure where it is normal: here its axis and shaft are 5.4 degrees apart too. */
    @Test
    void takesTheOtherFemurForAMeasureWhereItIsNormal() {
        var limb = new FilmLimb(
                Side.RIGHT,
                femur(Side.RIGHT, 12),
                femur(Side.LEFT, 0),
                Calibration.ofTagFiducial(PixelScale.of(0.2, 0.25)),
                true);
        var bend = FilmBend.of(limb, Bone.FEMUR).orElseThrow();
        assertThat(bend.basis()).isEqualTo(FilmBend.Basis.OTHER_FEMUR);
        assertThat(bend.shaftAngle().degrees()).isCloseTo(5.4, within(KEPT));
        assertThat(bend.levelError(bend.centre().orElseThrow()).millimetres())
                .isCloseTo(
                        Math.hypot(1.5, 200 * Math.sin(Math.toRadians(1))) / Math.sin(Math.toRadians(12)),
                        within(KEPT));
    }

    /** Under five degrees no centre is told, and the words say so. */
    @Test
    void tellsNoCentreOfASmallBend() {
        var cut = cut(
                film(Side.LEFT, femur(Side.LEFT, 4)), CutKind.STRAIGHT, 4, new double[] {230, 230}, new double[] {0, 200
                });
        assertThat(cut.bend().orElseThrow().centre()).isEmpty();
        assertThat(String.join(" ", CutWords.notes(cut))).contains("The axes of the femur differ by 4.0\u00b0");
    }

    /** A round cut about the bend straightens the bone as a straight one does; the picture is cut along its arc. */
    @Test
    void cutsRoundAboutTheHinge() {
        var round =
                cut(film(Side.RIGHT, femur(Side.RIGHT, 12)), CutKind.ROUND, 12, new double[] {240, 240}, new double[] {
                    35, 200
                });
        var straight = cut(
                film(Side.RIGHT, femur(Side.RIGHT, 12)), CutKind.STRAIGHT, 12, new double[] {240, 240}, new double[] {
                    35, 200
                });
        assertThat(round.numbersAfter().angle(Quantity.MLDFA).orElseThrow().degrees())
                .isCloseTo(
                        straight.numbersAfter()
                                .angle(Quantity.MLDFA)
                                .orElseThrow()
                                .degrees(),
                        within(KEPT));
        var dome = round.dome().orElseThrow();
        assertThat(dome.width().millimetres()).isCloseTo(110, within(KEPT));
        assertThat(dome.radius().millimetres()).isCloseTo(Math.hypot(55, 40), within(KEPT));
        assertThat(CutDrawing.answer(round, 1).part()).hasSizeGreaterThan(20);
        assertThat(String.join(" ", CutWords.notes(round))).contains("slides").doesNotContain("opening");
    }
}
