package org.espalier.science.alignment;

import org.espalier.science.quantity.Length;

/**
 * How much larger a thing is shown at the detector than it is.
 *
 * <p>M = SID / (SID − OID), with SID the distance from source to detector and OID that from object to detector. Angles
 * and ratios do not depend on it.
 *
 * <p>Source: projective geometry; formula as in general radiography texts.
 *
 * @param factor size shown to true size, above 0
 */
public record Magnification(double factor) {

    /**
     * Checks the factor.
     *
     * @throws IllegalArgumentException if not finite and above 0
     */
    public Magnification {
        if (!(factor > 0 && Double.isFinite(factor))) {
            throw new IllegalArgumentException("A magnification is finite and above 0, not " + factor);
        }
    }

    /**
     * From where tube, object and detector stand.
     *
     * @param sourceToDetector from the tube to the detector, above 0
     * @param objectToDetector from the object to the detector, 0 to less than the tube's distance
     * @throws IllegalArgumentException if the object does not lie between tube and detector
     */
    public static Magnification ofDistances(Length sourceToDetector, Length objectToDetector) {
        double toObject = sourceToDetector.millimetres() - objectToDetector.millimetres();
        if (toObject <= 0 || objectToDetector.millimetres() < 0) {
            throw new IllegalArgumentException("An object " + objectToDetector + " before the detector does not stand"
                    + " between it and a tube at " + sourceToDetector);
        }
        return new Magnification(sourceToDetector.millimetres() / toObject);
    }

    /**
     * From a marker of known size.
     *
     * @param real its true size, above 0
     * @param shown its size at the detector, above 0
     */
    public static Magnification ofMarker(Length real, Length shown) {
        return new Magnification(shown.millimetres() / real.millimetres());
    }

    /** The true length of what is shown with this length at the detector. */
    public Length trueLength(Length shown) {
        return new Length(shown.millimetres() / factor);
    }

    /**
     * How much too long a bone's lengths read when the marker does not lie at its distance from the tube, as a part of
     * the length: positive for a marker nearer to the detector.
     *
     * @param sourceToMarker from the tube to the marker, above 0
     * @param sourceToBone from the tube to the bone, above 0
     */
    public static double excessOfMarkerOffBone(Length sourceToMarker, Length sourceToBone) {
        return sourceToMarker.minus(sourceToBone).millimetres() / sourceToBone.millimetres();
    }
}
