package org.espalier.reading;

import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;

/** One landmark of one limb as a hand set it, in pixels of the film as stored; the landmark by its code. */
public record PlacedPoint(Side side, String landmark, double x, double y) {

    public PixelPoint pixel() {
        return new PixelPoint(x, y);
    }
}
