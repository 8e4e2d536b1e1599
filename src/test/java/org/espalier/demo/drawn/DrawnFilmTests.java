package org.espalier.demo.drawn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LandmarkGuide;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DrawnFilmTests {

    /** The landmarks are exact; what is left is rounding. */
    private static final double EXACT = 1e-6;

    record Knee(BodyProportions.Build build, double age, double mLDFA, double mMPTA, double jlca, double beak) {}

    static Stream<Knee> knees() {
        return Stream.of(
                new Knee(BodyProportions.Build.BOY, 14, 88, 87, 1, 5),
                new Knee(BodyProportions.Build.GIRL, 2.2, 96, 74, 4, 19),
                new Knee(BodyProportions.Build.BOY, 6, 88, 72, 5, 22),
                new Knee(BodyProportions.Build.GIRL, 11, 78, 92, -1, 0),
                new Knee(BodyProportions.Build.GIRL, 16, 101, 80, 2, 12));
    }

    @ParameterizedTest
    @MethodSource("knees")
    void givesItsAnglesBackFromItsLandmarks(Knee knee) {
        BodyProportions body = BodyProportions.at(knee.build(), knee.age());
        DrawnFilm film = draw(body, limb(Side.RIGHT, body, knee), limb(Side.LEFT, body, knee), 1);
        for (Side side : Side.values()) {
            LimbNumbers numbers = measure(film, side);
            assertThat(numbers.value(Quantity.MLDFA).orElseThrow()).isCloseTo(knee.mLDFA(), within(EXACT));
            assertThat(numbers.value(Quantity.MMPTA).orElseThrow()).isCloseTo(knee.mMPTA(), within(EXACT));
            assertThat(numbers.value(Quantity.JLCA).orElseThrow()).isCloseTo(knee.jlca(), within(EXACT));
            assertThat(numbers.value(Quantity.LDTA).orElseThrow()).isCloseTo(89, within(EXACT));
            assertThat(numbers.value(Quantity.MDA).orElseThrow()).isCloseTo(knee.beak(), within(EXACT));
            assertThat(numbers.value(Quantity.ALDFA).orElseThrow()).isCloseTo(knee.mLDFA() - 6, within(EXACT));
            assertThat(numbers.value(Quantity.KNEE_OFFSET).orElseThrow()).isCloseTo(0.5, within(EXACT));
            assertThat(numbers.value(Quantity.FEMUR_LENGTH).orElseThrow()).isCloseTo(body.femurMm(), within(EXACT));
            assertThat(numbers.value(Quantity.TIBIA_LENGTH).orElseThrow()).isCloseTo(body.tibiaMm(), within(EXACT));
        }
    }

    private static DrawnLimb limb(Side side, BodyProportions body, Knee knee) {
        return DrawnLimb.straight(side, body)
                .withKnee(new Angle(knee.mLDFA()), new Angle(knee.mMPTA()), new Angle(knee.jlca()))
                .withMetaphysealAngle(new Angle(knee.beak()));
    }

    private static DrawnFilm draw(BodyProportions body, DrawnLimb right, DrawnLimb left, long seed) {
        return DrawnFilm.draw(
                new FilmOrder(body, right, left, 1.1, FilmOrder.FilmSheet.ofPixel(new Length(0.8)), seed));
    }

    private static DrawnFilm straight(double age, long seed) {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.BOY, age);
        return draw(body, DrawnLimb.straight(Side.RIGHT, body), DrawnLimb.straight(Side.LEFT, body), seed);
    }

    private static LimbNumbers measure(DrawnFilm film, Side side) {
        PixelScale scale = PixelScale.ofSquare(film.bonePixel().millimetres());
        return AlignmentMeasurement.measure(
                side,
                film.landmarks(side),
                Calibration.ofBall(scale, film.ball().diameter()));
    }

    @Test
    void standsWithTheChildsRightOnTheViewersLeft() {
        DrawnFilm film = straight(10, 1);
        for (LandmarkGuide.Step step : LandmarkGuide.frontal()) {
            Landmark landmark = step.landmark();
            assertThat(point(film, Side.RIGHT, landmark).x())
                    .isLessThan(point(film, Side.LEFT, landmark).x());
        }
    }

    @Test
    void keepsEveryLandmarkOnTheFilmAndBothFeetOnOneFloor() {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.GIRL, 9);
        Knee bowed = new Knee(BodyProportions.Build.GIRL, 9, 92, 74, 4, 18);
        DrawnFilm film = draw(body, limb(Side.RIGHT, body, bowed), DrawnLimb.straight(Side.LEFT, body), 1);
        for (Side side : Side.values()) {
            for (PixelPoint point : film.landmarks(side).points().values()) {
                assertThat(point.x()).isBetween(0.0, (double) film.width());
                assertThat(point.y()).isBetween(0.0, (double) film.height());
            }
        }
        assertThat(ankleHeight(film, Side.RIGHT)).isCloseTo(ankleHeight(film, Side.LEFT), within(EXACT));
    }

    private static double ankleHeight(DrawnFilm film, Side side) {
        return (point(film, side, Landmark.PLAFOND_MEDIAL).y()
                        + point(film, side, Landmark.PLAFOND_LATERAL).y())
                / 2;
    }

    private static PixelPoint point(DrawnFilm film, Side side, Landmark landmark) {
        return film.landmarks(side).point(landmark).orElseThrow();
    }

    @Test
    void leavesOutWhatASmallChildHasNotOssified() {
        assertThat(straight(3, 1).landmarks(Side.LEFT).points()).doesNotContainKey(Landmark.TROCHANTER_TIP);
        DrawnFilm older = straight(9, 1);
        assertThat(older.landmarks(Side.LEFT).points())
                .hasSize(LandmarkGuide.frontal().size());
        assertThat(measure(older, Side.LEFT).value(Quantity.LPFA).orElseThrow()).isCloseTo(90, within(EXACT));
    }

    @Test
    void showsTheBallAsLargeAsTheMagnificationSays() {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.BOY, 8);
        var sheet = new FilmOrder.FilmSheet(new Length(0.2), 1.05, 1.07, new Length(25));
        DrawnFilm film = DrawnFilm.draw(new FilmOrder(
                body, DrawnLimb.straight(Side.RIGHT, body), DrawnLimb.straight(Side.LEFT, body), 1, sheet, 3));
        assertThat(film.ball().diameterPixels()).isCloseTo(25 * 1.07 / 0.2, within(1e-9));
        assertThat(whitePixelsAround(film)).isCloseTo(film.ball().diameterPixels(), within(1.5));
    }

    /** Width of the white run through the middle of the ball, as a reader would measure it. */
    private static double whitePixelsAround(DrawnFilm film) {
        int row = (int) film.ball().centre().y();
        int column = (int) film.ball().centre().x();
        double half = film.stored()[row * film.width() + column] / 2.0;
        int left = column;
        while (film.stored()[row * film.width() + left] > half) {
            left--;
        }
        int right = column;
        while (film.stored()[row * film.width() + right] > half) {
            right++;
        }
        return right - left - 1;
    }

    @Test
    void showsBoneBrighterThanFleshAndFleshBrighterThanAir() {
        DrawnFilm film = straight(12, 1);
        PixelPoint shaft = point(film, Side.RIGHT, Landmark.TIBIA_SHAFT_DISTAL);
        int row = (int) shaft.y();
        double bone = mean(film, row, (int) shaft.x());
        double between = mean(film, row, film.width() / 2);
        double flesh = mean(film, row, (int) (shaft.x() + 18 / film.bonePixel().millimetres()));
        assertThat(bone).isGreaterThan(flesh + 150);
        assertThat(flesh).isGreaterThan(between + 150);
    }

    private static double mean(DrawnFilm film, int row, int column) {
        double sum = 0;
        for (int y = row - 2; y <= row + 2; y++) {
            for (int x = column - 2; x <= column + 2; x++) {
                sum += film.stored()[y * film.width() + x];
            }
        }
        return sum / 25;
    }

    @Test
    void staysWithinTwelveBits() {
        for (short value : straight(5, 1).stored()) {
            assertThat(value).isBetween((short) 0, (short) 4095);
        }
    }

    @Test
    void drawsTheSameFilmForTheSameSeedAndOtherGrainForAnother() {
        assertThat(straight(4, 7).stored()).isEqualTo(straight(4, 7).stored());
        assertThat(straight(4, 8).stored()).isNotEqualTo(straight(4, 7).stored());
    }

    @Test
    void showsAPlateAsMetalOnItsSideOfTheKnee() {
        BodyProportions body = BodyProportions.at(BodyProportions.Build.BOY, 11);
        DrawnLimb left = DrawnLimb.straight(Side.LEFT, body);
        DrawnPlate plate = new DrawnPlate(DrawnPlate.Bone.FEMUR, DrawnPlate.Face.MEDIAL, new Angle(20));
        DrawnFilm without = draw(body, DrawnLimb.straight(Side.RIGHT, body), left, 1);
        DrawnFilm with = draw(body, DrawnLimb.straight(Side.RIGHT, body), left.withPlates(List.of(plate)), 1);
        PixelPoint medial = point(with, Side.LEFT, Landmark.FEMUR_PHYSIS_MEDIAL);
        PixelPoint lateral = point(with, Side.LEFT, Landmark.FEMUR_PHYSIS_LATERAL);
        assertThat(mean(with, (int) medial.y(), (int) medial.x()))
                .isGreaterThan(mean(without, (int) medial.y(), (int) medial.x()) + 300);
        assertThat(mean(with, (int) lateral.y(), (int) lateral.x()))
                .isCloseTo(mean(without, (int) lateral.y(), (int) lateral.x()), within(20.0));
    }

    @Test
    void refusesAnAgeItHasNoSizesFor() {
        assertThatThrownBy(() -> BodyProportions.at(BodyProportions.Build.GIRL, Age.ofMonths(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("0.41");
    }
}
