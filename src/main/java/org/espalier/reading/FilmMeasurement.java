package org.espalier.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.exposure.LayoutCheck;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.Side;

/**
 * What follows from the marks on a film: the scale, the circles, the landmarks of each limb, its numbers, and what the
 * reader should be warned of. Nothing in it is kept anywhere but what was signed.
 *
 * @param scale the scale used and how it came about
 * @param circles what is round, as fitted
 * @param limbs the landmarks of each limb read, the hip centre from its circle
 * @param numbers every quantity of each limb read, in listing order
 * @param comparesSides whether right and left may be compared on this film
 * @param cautions what to warn of, gravest kinds first
 */
public record FilmMeasurement(
        FilmScale scale,
        List<RoundEdge> circles,
        Map<Side, LimbLandmarks> limbs,
        List<ReadNumber> numbers,
        boolean comparesSides,
        List<Caution> cautions) {

    /** Measures a film of which nothing else is known. */
    public static FilmMeasurement of(Marks marks, ReadingSettings settings, Calibration tags) {
        return of(marks, settings, tags, ChildOnFilm.UNKNOWN);
    }

    /**
     * Measures a film.
     *
     * @param tags the scale that the film tells of itself
     * @param child what is known of the child on it
     */
    static FilmMeasurement of(Marks marks, ReadingSettings settings, Calibration tags, ChildOnFilm child) {
        var circles = marks.edges().stream()
                .filter(edge -> isRead(edge, settings))
                .map(edge -> RoundEdge.of(edge, tags))
                .toList();
        var scale = FilmScale.of(settings, tags, circles);
        Map<Side, LimbLandmarks> limbs = new EnumMap<>(Side.class);
        settings.limbs().forEach(side -> limbs.put(side, landmarksOf(side, marks, circles)));
        Map<Side, LimbNumbers> measured = new EnumMap<>(Side.class);
        limbs.forEach((side, landmarks) ->
                measured.put(side, AlignmentMeasurement.measure(side, landmarks, scale.forAngles())));
        var exposure = Exposure.of(settings, measured);
        var lengths = LengthCautions.of(numbers(measured, settings, scale, exposure), child);
        var cautions = new ArrayList<Caution>();
        measured.values().forEach(limb -> cautions.addAll(GeometryCautions.of(limb)));
        cautions.addAll(layout(limbs, settings));
        cautions.addAll(lengths.cautions());
        circles.forEach(circle -> circle.caution().ifPresent(cautions::add));
        cautions.addAll(scale.cautions());
        if (!marks.isEmpty()) {
            cautions.addAll(exposure.cautions());
        }
        cautions.addAll(ScrewCautions.of(settings, lengths.numbers(), child));
        cautions.sort(
                (one, other) -> other.kind().severity().compareTo(one.kind().severity()));
        return new FilmMeasurement(
                scale, circles, limbs, lengths.numbers(), exposure.comparesSides(), List.copyOf(cautions));
    }

    /** The numbers that have a value. */
    public List<ReadNumber> values() {
        return numbers.stream().filter(number -> number.value().isPresent()).toList();
    }

    /** The same drawing with the numbers given, as they were signed. */
    FilmMeasurement withNumbers(List<ReadNumber> signed) {
        var explained = signed.stream()
                .sorted(Comparator.comparing(ReadNumber::quantity).thenComparing(ReadNumber::side))
                .map(number -> numbers.stream()
                        .filter(number::isOf)
                        .findFirst()
                        .map(number::explainedBy)
                        .orElse(number))
                .toList();
        return new FilmMeasurement(scale, circles, limbs, explained, comparesSides, cautions);
    }

    /** Whether something in the geometry contradicts itself, so that it must be mended before signing. */
    public boolean isImpossible() {
        return cautions.stream().anyMatch(Caution::isHarmful);
    }

    private static boolean isRead(EdgePoints edge, ReadingSettings settings) {
        return edge.side() == null
                ? settings.calibration() == CalibrationChoice.BALL
                : settings.limbs().contains(edge.side());
    }

    private static LimbLandmarks landmarksOf(Side side, Marks marks, List<RoundEdge> circles) {
        var landmarks = LimbLandmarks.none();
        for (PlacedPoint point : marks.points()) {
            if (point.side() == side) {
                landmarks = landmarks.with(Landmark.ofCode(point.landmark()).orElseThrow(), point.pixel());
            }
        }
        for (RoundEdge circle : circles) {
            if (circle.edge().side() == side && circle.centre().isPresent()) {
                landmarks = landmarks.with(Landmark.HIP_CENTRE, circle.centre().get());
            }
        }
        return landmarks;
    }

    /** What the landmarks asked for on such a film can tell, in listing order. */
    private static List<ReadNumber> numbers(
            Map<Side, LimbNumbers> measured, ReadingSettings settings, FilmScale scale, Exposure exposure) {
        return Arrays.stream(Quantity.values())
                .filter(quantity -> settings.taken().fromTheSide() == isFromTheSide(quantity))
                .flatMap(quantity -> measured.entrySet().stream()
                        .map(limb -> ReadNumber.of(
                                limb.getKey(), quantity, limb.getValue().outcome(quantity)))
                        .map(number -> inScale(number, scale).under(exposure.on(number.side(), quantity))))
                .toList();
    }

    private static boolean isFromTheSide(Quantity quantity) {
        return quantity.family() == Landmark.Family.FROM_THE_SIDE;
    }

    private static ReadNumber inScale(ReadNumber number, FilmScale scale) {
        return number.quantity().unit() == Quantity.Unit.MILLIMETRES && !scale.isInMillimetres()
                ? number.withheld(ReadNumber.Absence.UNCALIBRATED)
                : number;
    }

    private static List<Caution> layout(Map<Side, LimbLandmarks> limbs, ReadingSettings settings) {
        return settings.taken().fromTheSide()
                ? List.of()
                : LayoutCheck.of(limbs).stream()
                        .map(finding ->
                                Caution.of(Caution.Kind.valueOf(finding.kind().name()), finding.side()))
                        .toList();
    }
}
