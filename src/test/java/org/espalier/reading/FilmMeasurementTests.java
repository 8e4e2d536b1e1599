package org.espalier.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.espalier.reading.Caution.Kind;
import org.espalier.science.alignment.JointLine;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;
import org.junit.jupiter.api.Test;

class FilmMeasurementTests {

    /** The printed coordinates carry two decimals of a millimetre. */
    private static final Offset<Double> TOLERANCE = within(0.02);

    private static final Calibration TAGS = Calibration.ofTagGeometry(PixelScale.ofSquare(0.2));

    private final ReferenceLimb right = new ReferenceLimb(Side.RIGHT, 700, 0.2, 0.2);
    private final ReferenceLimb left = new ReferenceLimb(Side.LEFT, 1600, 0.2, 0.2);

    @Test
    void readsBothLimbsOfAFilmAlike() {
        var measurement = FilmMeasurement.of(both(), Taken.good(), TAGS);
        for (Side side : Side.values()) {
            assertThat(value(measurement, side, Quantity.MLDFA)).isCloseTo(ReferenceLimb.MLDFA, TOLERANCE);
            assertThat(value(measurement, side, Quantity.MMPTA)).isCloseTo(ReferenceLimb.MMPTA, TOLERANCE);
            assertThat(value(measurement, side, Quantity.JLCA)).isCloseTo(ReferenceLimb.JLCA, TOLERANCE);
            assertThat(value(measurement, side, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, TOLERANCE);
            assertThat(value(measurement, side, Quantity.MAD)).isCloseTo(ReferenceLimb.MAD, TOLERANCE);
        }
        assertThat(measurement.cautions()).isEmpty();
    }

    @Test
    void readsPixelsThatAreNotSquare() {
        var limb = new ReferenceLimb(Side.RIGHT, 700, 0.15, 0.25);
        var tags = Calibration.ofTagGeometry(PixelScale.of(0.15, 0.25));
        var measurement = FilmMeasurement.of(limb.marks(), onlyRight(), tags);
        assertThat(value(measurement, Side.RIGHT, Quantity.HKA)).isCloseTo(ReferenceLimb.HKA, TOLERANCE);
        assertThat(value(measurement, Side.RIGHT, Quantity.MAD)).isCloseTo(ReferenceLimb.MAD, TOLERANCE);
        var head = measurement.circles().getFirst().drawn().orElseThrow();
        assertThat(head.rx()).isCloseTo(11 / 0.15, within(1e-6));
        assertThat(head.ry()).isCloseTo(11 / 0.25, within(1e-6));
    }

    @Test
    void warnsOfAShortArc() {
        assertThat(kinds(rightWithHead(149))).containsExactly(Kind.SHORT_ARC);
        assertThat(kinds(rightWithHead(151))).isEmpty();
    }

    @Test
    void warnsOfEdgePointsThatNoCircleMeets() {
        var line = Stream.of(10, 20, 30, 40, 50)
                .map(at -> new EdgePoints.EdgePoint(at, at))
                .toList();
        var marks = new Marks(right.points(), List.of(new EdgePoints(Side.RIGHT, "hip_centre", line)));
        var measurement = FilmMeasurement.of(marks, onlyRight(), TAGS);
        assertThat(kinds(measurement)).containsExactly(Kind.NO_CIRCLE);
        assertThat(absence(measurement, Quantity.HKA)).isEqualTo(ReadNumber.Absence.LANDMARKS_MISSING);
    }

    @Test
    void refusesMedialAndLateralExchangedOnOneLine() {
        var points = right.points().stream()
                .map(point -> switch (point.landmark()) {
                    case "condyle_medial" -> right.point("condyle_lateral", 13.91, 230.94);
                    case "condyle_lateral" -> right.point("condyle_medial", 63.21, 222.55);
                    default -> point;
                })
                .toList();
        var measurement = FilmMeasurement.of(new Marks(points, List.of(right.head(240))), onlyRight(), TAGS);
        assertThat(measurement.isImpossible()).isTrue();
        assertThat(measurement.cautions().getFirst().values()).containsExactly(JointLine.CONDYLES);
    }

    @Test
    void refusesLateralThatPointsToTheOtherLimb() {
        var points = both().points().stream()
                .map(p -> new PlacedPoint(p.side(), mirrored(p.landmark()), p.x(), p.y()))
                .toList();
        var measurement = FilmMeasurement.of(new Marks(points, both().edges()), Taken.good(), TAGS);
        assertThat(kinds(measurement)).containsExactly(Kind.MEDIAL_LATERAL_SWAPPED, Kind.MEDIAL_LATERAL_SWAPPED);
        assertThat(measurement.isImpossible()).isTrue();
    }

    /** Landmarks alone cannot tell exchanged sides from a mirrored film: the marker must. */
    @Test
    void asksForTheMarkerWhenBothSidesAreExchanged() {
        var measurement = FilmMeasurement.of(exchanged(both()), Taken.good(), TAGS);
        assertThat(kinds(measurement)).containsExactly(Kind.SIDES_SWAPPED_OR_MIRRORED);
        assertThat(measurement.isImpossible()).isFalse();
    }

    @Test
    void asksForTheMarkerWhenOneLimbLiesAsTheOtherSide() {
        var settings = onlyRight().withLimbs(List.of(Side.LEFT));
        var measurement = FilmMeasurement.of(exchanged(right.marks()), settings, TAGS);
        assertThat(kinds(measurement)).containsExactly(Kind.LOOKS_LIKE_OTHER_SIDE);
        assertThat(measurement.isImpossible()).isFalse();
    }

    @Test
    void withholdsLengthsAndDoubtsTheAxisOfAFlexedKnee() {
        var flexed = Taken.but("\"flexionRight\": 11");
        var measurement = FilmMeasurement.of(both(), flexed, TAGS);
        assertThat(absence(measurement, Quantity.LIMB_LENGTH)).isEqualTo(ReadNumber.Absence.FLEXED);
        assertThat(number(measurement, Side.RIGHT, Quantity.HKA).doubtful()).isTrue();
        assertThat(number(measurement, Side.RIGHT, Quantity.MLDFA).doubtful()).isFalse();
        assertThat(number(measurement, Side.LEFT, Quantity.HKA).doubtful()).isFalse();
        assertThat(number(measurement, Side.LEFT, Quantity.LIMB_LENGTH).value()).isPresent();
        var straight = Taken.but("\"flexionRight\": 10");
        assertThat(kinds(FilmMeasurement.of(both(), straight, TAGS))).isEmpty();
    }

    @Test
    void tellsNoConvergenceLyingDown() {
        var measurement = FilmMeasurement.of(both(), Taken.but("\"stance\": \"SUPINE\""), TAGS);
        assertThat(absence(measurement, Quantity.JLCA)).isEqualTo(ReadNumber.Absence.SUPINE);
    }

    @Test
    void leavesOutTheLimbThatIsNotRead() {
        var measurement = FilmMeasurement.of(both(), onlyRight(), TAGS);
        assertThat(measurement.numbers()).allMatch(number -> number.side() == Side.RIGHT);
    }

    @Test
    void saysNothingOfAnEmptyFilm() {
        var measurement = FilmMeasurement.of(Marks.NONE, Taken.good(), TAGS);
        assertThat(measurement.values()).isEmpty();
        assertThat(measurement.cautions()).isEmpty();
    }

    private Marks both() {
        return new Marks(
                Stream.concat(right.points().stream(), left.points().stream()).toList(),
                List.of(right.head(240), left.head(240)));
    }

    private FilmMeasurement rightWithHead(double arc) {
        return FilmMeasurement.of(new Marks(right.points(), List.of(right.head(arc))), onlyRight(), TAGS);
    }

    private static String mirrored(String landmark) {
        return landmark.endsWith("medial")
                ? landmark.replace("medial", "lateral")
                : landmark.replace("lateral", "medial");
    }

    private static Marks exchanged(Marks marks) {
        return new Marks(
                marks.points().stream()
                        .map(p -> new PlacedPoint(p.side().opposite(), p.landmark(), p.x(), p.y()))
                        .toList(),
                marks.edges().stream()
                        .map(e -> new EdgePoints(
                                e.side() == Side.RIGHT ? Side.LEFT : Side.RIGHT, e.landmark(), e.points()))
                        .toList());
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
