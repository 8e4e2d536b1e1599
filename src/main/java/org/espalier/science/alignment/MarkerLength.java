package org.espalier.science.alignment;

import org.espalier.science.quantity.Length;

/**
 * A length measured with a marker, and its standard error.
 *
 * <p>L = shown / M with M = marker shown / marker true; σ_L/L = √((σ/shown)² + (σ_m/marker shown)² + (σ_off/SOD)²).
 *
 * <p>Source: first-order propagation of independent errors.
 *
 * @param length the true length
 * @param standardError its standard error
 */
public record MarkerLength(Length length, Length standardError) {

    /**
     * A length at the detector with its standard error.
     *
     * @param length as shown, above 0
     * @param standardError of the same, not below 0
     */
    public record Shown(Length length, Length standardError) {

        private double relativeError() {
            return standardError.millimetres() / length.millimetres();
        }
    }

    /**
     * Scales what is shown by the marker.
     *
     * @param shown the length at the detector
     * @param marker the marker's size at the detector
     * @param markerSize the marker's true size
     * @param offset standard deviation of the marker's distance from the bone along the ray
     * @param sourceToBone from the tube to the bone
     */
    public static MarkerLength of(Shown shown, Shown marker, Length markerSize, Length offset, Length sourceToBone) {
        Length length = Magnification.ofMarker(markerSize, marker.length()).trueLength(shown.length());
        double offsetError = offset.millimetres() / sourceToBone.millimetres();
        double relative = Math.sqrt(shown.relativeError() * shown.relativeError()
                + marker.relativeError() * marker.relativeError()
                + offsetError * offsetError);
        return new MarkerLength(length, new Length(length.millimetres() * relative));
    }
}
