package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.espalier.reading.Caution.Kind;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

/** Where a film's millimetres come from, and what is said when there are none. */
class FilmScaleMeasurementTests {

    /** The printed coordinates carry two decimals of a millimetre. */
    private static final Offset<Double> TOLERANCE = within(0.02);

    private static final Calibration TAGS = Calibration.ofTagGeometry(PixelScale.ofSquare(0.2));

    private final ReferenceLimb right = new ReferenceLimb(Side.RIGHT, 700, 0.2, 0.2);
    private final ReferenceLimb left = new ReferenceLimb(Side.LEFT, 1600, 0.2, 0.2);

    @Test
    void keepsTheShapeOfPixelsWhereNoLengthIsTold() {
        var limb = new ReferenceLimb(Side.RIGHT, 700, 0.15, 0.25);
        var tags = Calibration.ofTagGeometry(PixelScale.of(0.15, 0.25));
        var settings = onlyRight().withCalibration(CalibrationChoice.NONE);
        var measurement = FilmMeasurement.of(limb.marks(), settings, tags);
        assertThat(value(measurement, Side.RIGHT, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, TOLERANCE);
        assertThat(measurement.values()).noneMatch(number -> number.quantity().unit() == Quantity.Unit.MILLIMETRES);
        assertThat(measurement.scale().calibration()).isEqualTo(Calibration.none());
        assertThat(kinds(measurement)).containsExactly(Kind.UNCALIBRATED);
    }

    @Test
    void tellsNoLengthOnAFilmWithoutScale() {
        var measurement = FilmMeasurement.of(both(), Taken.good(), Calibration.none());
        assertThat(absence(measurement, Quantity.MAD)).isEqualTo(ReadNumber.Absence.UNCALIBRATED);
        assertThat(value(measurement, Side.LEFT, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, TOLERANCE);
        assertThat(kinds(measurement)).containsExactly(Kind.UNCALIBRATED);
    }

    @Test
    void saysThatLengthsAreThoseAtTheDetector() {
        var tags = Calibration.ofDetectorPlane(PixelScale.ofSquare(0.2));
        assertThat(kinds(FilmMeasurement.of(both(), Taken.good(), tags))).containsExactly(Kind.DETECTOR_PLANE);
    }

    /**
     * A 25 mm ball of 125 pixels on a film of 0.2 mm a pixel is shown as it is; of 137.5 pixels it is 10 % enlarged.
     */
    @Test
    void takesTheScaleFromTheBall() {
        var settings = Taken.but("\"ballOffMm\": 0")
                .withCalibration(CalibrationChoice.BALL)
                .withBallDiameter(25.0);
        var measurement = FilmMeasurement.of(withBall(137.5), settings, TAGS);
        assertThat(value(measurement, Side.RIGHT, Quantity.MAD)).isCloseTo(ReferenceLimb.MAD / 1.1, TOLERANCE);
        assertThat(value(measurement, Side.RIGHT, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, TOLERANCE);
        assertThat(measurement.scale().ballPixels().orElseThrow()).isCloseTo(137.5, within(1e-6));
        assertThat(kinds(measurement)).isEmpty();
    }

    @Test
    void doubtsABallThatMagnificationCannotExplain() {
        var settings = Taken.but("\"ballOffMm\": 0")
                .withCalibration(CalibrationChoice.BALL)
                .withBallDiameter(50.0);
        assertThat(kinds(FilmMeasurement.of(withBall(137.5), settings, TAGS))).containsExactly(Kind.BALL_AGAINST_TAGS);
    }

    @Test
    void tellsNoLengthBeforeTheBallStandsWithItsDiameter() {
        var settings = Taken.but("\"ballOffMm\": 0").withCalibration(CalibrationChoice.BALL);
        assertThat(kinds(FilmMeasurement.of(withBall(125), settings, TAGS))).containsExactly(Kind.BALL_MISSING);
        var measurement = FilmMeasurement.of(both(), settings.withBallDiameter(25.0), TAGS);
        assertThat(kinds(measurement)).containsExactly(Kind.BALL_MISSING);
        assertThat(absence(measurement, Quantity.MAD)).isEqualTo(ReadNumber.Absence.UNCALIBRATED);
    }

    private Marks both() {
        return new Marks(
                Stream.concat(right.points().stream(), left.points().stream()).toList(),
                List.of(right.head(240), left.head(240)));
    }

    private Marks withBall(double diameterPixels) {
        var edge = new ArrayList<EdgePoints.EdgePoint>();
        for (int i = 0; i < 8; i++) {
            double turn = Math.toRadians(45 * i);
            edge.add(new EdgePoints.EdgePoint(
                    1100 + diameterPixels / 2 * Math.cos(turn), 900 + diameterPixels / 2 * Math.sin(turn)));
        }
        var edges = new ArrayList<>(both().edges());
        edges.add(new EdgePoints(null, EdgePoints.BALL, edge));
        return new Marks(both().points(), edges);
    }

    private static ReadingSettings onlyRight() {
        return Taken.good().withLimbs(List.of(Side.RIGHT));
    }

    private static double value(FilmMeasurement measurement, Side side, Quantity quantity) {
        OptionalDouble value = number(measurement, side, quantity).value();
        return value.orElseThrow();
    }

    private static ReadNumber number(FilmMeasurement measurement, Side side, Quantity quantity) {
        return measurement.numbers().stream()
                .filter(number -> number.side() == side && number.quantity() == quantity)
                .findFirst()
                .orElseThrow();
    }

    private static ReadNumber.Absence absence(FilmMeasurement measurement, Quantity quantity) {
        return number(measurement, Side.RIGHT, quantity).reasonOfAbsence().orElseThrow();
    }

    private static List<Kind> kinds(FilmMeasurement measurement) {
        return measurement.cautions().stream().map(Caution::kind).toList();
    }
}
