package org.espalier.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.espalier.science.alignment.AlignmentMeasurement;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.alignment.LimbNumbers;
import org.espalier.science.alignment.Quantity;
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
 * @param cautions what to warn of, gravest kinds first
 */
public record FilmMeasurement(
        FilmScale scale,
        List<RoundEdge> circles,
        Map<Side, LimbLandmarks> limbs,
        List<ReadNumber> numbers,
        List<Caution> cautions) {

    private static final Set<Quantity> OF_THE_WHOLE_LIMB =
            Set.of(Quantity.HKA, Quantity.MAD, Quantity.WBL, Quantity.ATFA);

    /**
     * Measures a film.
     *
     * @param tags the scale that the film tells of itself
     */
    public static FilmMeasurement of(Marks marks, ReadingSettings settings, Calibration tags) {
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
        var cautions = new ArrayList<Caution>();
        measured.values().forEach(limb -> cautions.addAll(GeometryCautions.of(limb)));
        cautions.addAll(LayoutCautions.of(limbs));
        circles.forEach(circle -> circle.caution().ifPresent(cautions::add));
        cautions.addAll(scale.cautions());
        cautions.addAll(positioningCautions(settings.positioning()));
        cautions.sort(
                (one, other) -> other.kind().severity().compareTo(one.kind().severity()));
        return new FilmMeasurement(scale, circles, limbs, numbers(measured, settings, scale), List.copyOf(cautions));
    }

    /** The numbers that have a value. */
    public List<ReadNumber> values() {
        return numbers.stream().filter(number -> number.value().isPresent()).toList();
    }

    /** The same drawing with the numbers given, as they were signed. */
    FilmMeasurement withNumbers(List<ReadNumber> numbers) {
        return new FilmMeasurement(scale, circles, limbs, numbers, cautions);
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

    private static List<ReadNumber> numbers(
            Map<Side, LimbNumbers> measured, ReadingSettings settings, FilmScale scale) {
        return Quantity.frontal().stream()
                .flatMap(quantity -> measured.entrySet().stream()
                        .map(limb -> ReadNumber.of(
                                limb.getKey(), quantity, limb.getValue().outcome(quantity)))
                        .map(number -> judged(number, settings.positioning(), scale)))
                .toList();
    }

    private static ReadNumber judged(ReadNumber number, Positioning positioning, FilmScale scale) {
        boolean isLength = number.quantity().unit() == Quantity.Unit.MILLIMETRES;
        if (isLength && !scale.isInMillimetres()) {
            return number.withheld(ReadNumber.Absence.UNCALIBRATED);
        }
        if (number.quantity() == Quantity.JLCA && positioning.isSupine()) {
            return number.withheld(ReadNumber.Absence.SUPINE);
        }
        if (!positioning.isFlexed()) {
            return number;
        }
        return OF_THE_WHOLE_LIMB.contains(number.quantity())
                ? number.inDoubt()
                : isShortened(number.quantity()) ? number.withheld(ReadNumber.Absence.FLEXED) : number;
    }

    private static boolean isShortened(Quantity quantity) {
        return switch (quantity) {
            case FEMUR_LENGTH, TIBIA_LENGTH, LIMB_LENGTH -> true;
            default -> false;
        };
    }

    private static List<Caution> positioningCautions(Positioning positioning) {
        var cautions = new ArrayList<Caution>();
        if (positioning.isFlexed()) {
            cautions.add(
                    Caution.ofFilm(Caution.Kind.FLEXED, positioning.flexion().orElseThrow()));
        }
        if (positioning.isSupine()) {
            cautions.add(Caution.ofFilm(Caution.Kind.SUPINE));
        }
        return cautions;
    }
}
