package org.espalier.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The limb is the constructed coordinate case C2 (tibia vara, HKA 22.00 degrees); the turned axis is worked out here by elementary
 * geometry, apart from the program's own. Tolerance: a tenth of a degree is promised, 1e-6 is kept.
 */
class FilmCutTests {

    private static final double[] HIP = {0, 0};
    private static final double[] CONDYLES = {(13.91 + 63.21) / 2, (230.94 + 222.55) / 2};
    private static final double[] PLATEAU = {(14.69 + 64.44) / 2, (235.12 + 230.20) / 2};
    private static final double[] ANKLE = {0, 413.38};
    private static final double KEPT = 1e-6;

    /** On a film whose pixels are 0.2 mm across and 0.25 mm down; a right limb lies with lateral on the left. */
    private static FilmCut cut(Side side, double outwards) {
        return new FilmCut(
                side,
                limb(side),
                Calibration.ofTagFiducial(PixelScale.of(0.2, 0.25)),
                true,
                pixel(side, -20, 262),
                pixel(side, 90, 262),
                pixel(side, 55, 262),
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
        var hip = after.point(Landmark.HIP_CENTRE).orElseThrow();
        var knee = FilmCut.middle(after, Landmark.CONDYLE_MEDIAL, Landmark.CONDYLE_LATERAL)
                .orElseThrow();
        var ankle = FilmCut.middle(after, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .orElseThrow();
        double across = (knee.x() - hip.x()) * (ankle.y() - hip.y()) - (knee.y() - hip.y()) * (ankle.x() - hip.x());
        assertThat(across / 1e6).isCloseTo(0, within(1e-6));
    }

    @Test
    void movesThePictureAsItMovesTheLandmarks() {
        var cut = cut(Side.RIGHT, 10);
        var answer = CutDrawing.answer(cut, 3);
        var m = answer.matrix();
        var ankle = FilmCut.middle(cut.landmarks(), Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                .orElseThrow();
        var moved = FilmCut.middle(cut.after(), Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
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
                        Side.RIGHT,
                        LimbLandmarks.none(),
                        Calibration.none(),
                        false,
                        new PixelPoint(10, 10),
                        new PixelPoint(10.5, 900),
                        new PixelPoint(10, 100),
                        Angle.ZERO))
                .hasMessageContaining("across the bone");
        assertThatThrownBy(() -> new CutRequest(1, Side.RIGHT, 0, 0, 9, 9, 5, 5, 61))
                .hasMessageContaining("61");
    }
}
