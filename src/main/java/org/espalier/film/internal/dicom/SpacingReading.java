package org.espalier.film.internal.dicom;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far apart the pixels of a film are, and in which plane that was measured (PS3.3 sections 10.7.1 and 10.7.1.3).
 *
 * @param rowMillimetres distance between adjacent rows, the first value of the tag
 * @param columnMillimetres distance between adjacent columns, the second value
 * @param kind where the distance holds
 * @param magnification the sender's estimate of how much larger than the bone its image on the detector is; it is
 *     reported, never applied
 */
public record SpacingReading(double rowMillimetres, double columnMillimetres, Kind kind, OptionalDouble magnification) {

    /** Spacings closer than this part of each other differ by rounding, not by calibration. */
    private static final double ROUNDING = 1e-3;

    /** Where a spacing holds. */
    public enum Kind {
        /** At some depth in the patient, corrected for known or assumed geometry. */
        CALIBRATED_GEOMETRY,
        /** At the depth of an object of known size that was measured on the film. */
        CALIBRATED_FIDUCIAL,
        /** In the patient, since it differs from the detector's; how is not said. */
        CALIBRATED_UNSTATED,
        /** At the detector or on the scanned sheet: bones appear enlarged. */
        DETECTOR_PLANE,
        /** Pixel Spacing alone: whether it was calibrated cannot be determined (section 10.7.1.1). */
        UNDETERMINED
    }

    private record Pair(double row, double column) {

        boolean isCloseTo(Pair other) {
            return isClose(row, other.row) && isClose(column, other.column);
        }

        private static boolean isClose(double one, double other) {
            return Math.abs(one - other) <= ROUNDING * other;
        }
    }

    public SpacingReading {
        if (!isPositive(rowMillimetres) || !isPositive(columnMillimetres)) {
            throw new IllegalArgumentException("spacing " + rowMillimetres + " x " + columnMillimetres + " mm");
        }
    }

    /** The spacing of a film; empty when no tag has two positive numbers. Zero, as some senders write it, is none. */
    public static Optional<SpacingReading> of(DataSet film) {
        OptionalDouble magnification = film.decimals(Tag.MAGNIFICATION_FACTOR).stream()
                .mapToDouble(Double::doubleValue)
                .filter(SpacingReading::isPositive)
                .findFirst();
        Optional<Pair> receptor =
                pair(film, Tag.IMAGER_PIXEL_SPACING).or(() -> pair(film, Tag.NOMINAL_SCANNED_PIXEL_SPACING));
        Optional<Pair> patient = pair(film, Tag.PIXEL_SPACING);
        return patient.map(spacing -> reading(spacing, kind(film, spacing, receptor), magnification))
                .or(() -> receptor.map(spacing -> reading(spacing, Kind.DETECTOR_PLANE, magnification)));
    }

    private static Kind kind(DataSet film, Pair patient, Optional<Pair> receptor) {
        return switch (film.string(Tag.PIXEL_SPACING_CALIBRATION_TYPE).orElse("")) {
            case "GEOMETRY" -> Kind.CALIBRATED_GEOMETRY;
            case "FIDUCIAL" -> Kind.CALIBRATED_FIDUCIAL;
            default ->
                receptor.map(spacing -> patient.isCloseTo(spacing) ? Kind.DETECTOR_PLANE : Kind.CALIBRATED_UNSTATED)
                        .orElse(Kind.UNDETERMINED);
        };
    }

    private static SpacingReading reading(Pair pair, Kind kind, OptionalDouble magnification) {
        return new SpacingReading(pair.row, pair.column, kind, magnification);
    }

    private static Optional<Pair> pair(DataSet film, Tag tag) {
        List<Double> values = film.decimals(tag);
        return values.size() == 2 && values.stream().allMatch(SpacingReading::isPositive)
                ? Optional.of(new Pair(values.getFirst(), values.getLast()))
                : Optional.empty();
    }

    private static boolean isPositive(double value) {
        return value > 0 && Double.isFinite(value);
    }
}
