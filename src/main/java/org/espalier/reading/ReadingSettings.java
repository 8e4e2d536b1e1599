package org.espalier.reading;

import java.util.List;
import java.util.Optional;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * What a reader chooses beside the landmarks.
 *
 * @param limbs the limbs to read, in guided order, at least one
 * @param ballDiameterMm true diameter of the ball, 5 to 100 mm; asked for only when the ball gives the scale
 */
public record ReadingSettings(
        List<Side> limbs,
        CalibrationChoice calibration,
        @Nullable Double ballDiameterMm,
        Positioning positioning) {

    /**
     * @throws IllegalArgumentException without a limb, with one twice, or for a ball outside 5 to 100 mm
     */
    public ReadingSettings {
        limbs = limbs.stream().distinct().sorted().toList();
        if (limbs.isEmpty()) {
            throw new IllegalArgumentException("A reading is of one limb or both");
        }
        if (ballDiameterMm != null && !(ballDiameterMm >= 5 && ballDiameterMm <= 100)) {
            throw new IllegalArgumentException("A calibration ball measures 5 to 100 mm, not " + ballDiameterMm);
        }
    }

    /** Both limbs, scale from the film, nothing recorded of how the child stood. */
    public static ReadingSettings ofFilm() {
        return new ReadingSettings(
                List.of(Side.RIGHT, Side.LEFT), CalibrationChoice.TAGS, null, Positioning.NOT_RECORDED);
    }

    public Optional<Length> ballDiameter() {
        return Optional.ofNullable(ballDiameterMm).map(Length::ofMillimetres);
    }

    public ReadingSettings withLimbs(List<Side> limbs) {
        return new ReadingSettings(limbs, calibration, ballDiameterMm, positioning);
    }

    public ReadingSettings withCalibration(CalibrationChoice calibration) {
        return new ReadingSettings(limbs, calibration, ballDiameterMm, positioning);
    }

    public ReadingSettings withBallDiameter(@Nullable Double ballDiameterMm) {
        return new ReadingSettings(limbs, calibration, ballDiameterMm, positioning);
    }

    public ReadingSettings withPositioning(Positioning positioning) {
        return new ReadingSettings(limbs, calibration, ballDiameterMm, positioning);
    }
}
