package org.espalier.film;

import java.util.Optional;
import org.espalier.film.internal.dicom.SpacingReading;
import org.espalier.science.quantity.Calibration;
import org.espalier.science.quantity.PixelScale;

/**
 * The millimetres a film's own tags tell.
 *
 * @param size of a pixel; empty exactly when the source is {@link ScaleSource#NONE}
 * @param magnification the sender's estimate of how much larger than the bone its image is; told, never applied
 */
public record FilmScale(ScaleSource source, Optional<PixelScale> size, Optional<Double> magnification) {

    static final FilmScale NONE = new FilmScale(ScaleSource.NONE, Optional.empty(), Optional.empty());

    public FilmScale {
        if ((source == ScaleSource.NONE) == size.isPresent()) {
            throw new IllegalArgumentException("a scale from " + source + " cannot be " + size);
        }
    }

    static FilmScale of(Optional<SpacingReading> reading) {
        return reading.map(FilmScale::of).orElse(NONE);
    }

    private static FilmScale of(SpacingReading reading) {
        var magnification = reading.magnification();
        return new FilmScale(
                source(reading.kind()),
                Optional.of(PixelScale.of(reading.columnMillimetres(), reading.rowMillimetres())),
                magnification.isPresent() ? Optional.of(magnification.getAsDouble()) : Optional.empty());
    }

    private static ScaleSource source(SpacingReading.Kind kind) {
        return switch (kind) {
            case DETECTOR_PLANE -> ScaleSource.DETECTOR_PLANE;
            case UNDETERMINED -> ScaleSource.UNDETERMINED;
            case CALIBRATED_GEOMETRY -> ScaleSource.GEOMETRY;
            case CALIBRATED_FIDUCIAL -> ScaleSource.FIDUCIAL;
            case CALIBRATED_UNSTATED -> ScaleSource.UNSTATED;
        };
    }

    /** As a calibration; what is not said to hold in the patient counts as measured at the detector. */
    public Calibration toCalibration() {
        return size.map(scale -> switch (source) {
                    case FIDUCIAL -> Calibration.ofTagFiducial(scale);
                    case GEOMETRY, UNSTATED -> Calibration.ofTagGeometry(scale);
                    case DETECTOR_PLANE, UNDETERMINED, NONE -> Calibration.ofDetectorPlane(scale);
                })
                .orElse(Calibration.none());
    }
}
