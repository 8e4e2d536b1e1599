package org.espalier.reading;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;

/**
 * What a reader chooses beside the landmarks.
 *
 * @param limbs the limbs to read, in guided order, at least one
 * @param taken how the film was taken
 * @param further which further landmarks are asked for
 * @param screws what was seen of each screw, for every plate the reader saw
 */
public record ReadingSettings(
        List<Side> limbs,
        CalibrationChoice calibration,
        FilmTaken taken,
        Set<Landmark.Family> further,
        List<ScrewSeen> screws) {

    /**
     * @throws IllegalArgumentException without a limb
     */
    public ReadingSettings {
        limbs = limbs.stream().distinct().sorted().toList();
        if (limbs.isEmpty()) {
            throw new IllegalArgumentException("A reading is of one limb or both");
        }
        further = further == null ? Set.of() : Set.copyOf(further);
        screws = screws == null ? List.of() : List.copyOf(screws);
    }

    /** Both limbs, scale from the film, nothing recorded of how it was taken. */
    public static ReadingSettings ofFilm() {
        return new ReadingSettings(
                List.of(Side.RIGHT, Side.LEFT), CalibrationChoice.TAGS, FilmTaken.notRecorded(), Set.of(), List.of());
    }

    public Optional<Length> ballDiameter() {
        return taken.ballDiameter();
    }

    /** The families of landmarks that this film is asked for. */
    Set<Landmark.Family> families() {
        if (taken.fromTheSide()) {
            return EnumSet.of(Landmark.Family.FROM_THE_SIDE);
        }
        var families = EnumSet.of(Landmark.Family.FRONTAL);
        families.addAll(further);
        if (!screws.isEmpty()) {
            families.add(Landmark.Family.IMPLANT);
        }
        return families;
    }

    /** Whether a landmark of the limb is asked for: those of an implant only where a plate was seen. */
    boolean asks(Side side, Landmark landmark) {
        return asks(side, landmark.family(), landmark.name());
    }

    /** Whether the limb's landmarks of a quantity are asked for. */
    boolean asks(Side side, Quantity quantity) {
        return asks(side, quantity.family(), quantity.name());
    }

    private boolean asks(Side side, Landmark.Family family, String name) {
        return families().contains(family)
                && (family != Landmark.Family.IMPLANT
                        || screws.stream()
                                .anyMatch(screw ->
                                        screw.side() == side && screw.plate().bears(name)));
    }

    public ReadingSettings withLimbs(List<Side> limbs) {
        return new ReadingSettings(limbs, calibration, taken, further, screws);
    }

    public ReadingSettings withCalibration(CalibrationChoice calibration) {
        return new ReadingSettings(limbs, calibration, taken, further, screws);
    }

    public ReadingSettings withTaken(FilmTaken taken) {
        return new ReadingSettings(limbs, calibration, taken, further, screws);
    }

    public ReadingSettings withBallDiameter(double millimetres) {
        return withTaken(taken.withBall(millimetres));
    }

    public ReadingSettings withFurther(Set<Landmark.Family> further) {
        return new ReadingSettings(limbs, calibration, taken, further, screws);
    }

    public ReadingSettings withScrews(List<ScrewSeen> screws) {
        return new ReadingSettings(limbs, calibration, taken, further, screws);
    }
}
