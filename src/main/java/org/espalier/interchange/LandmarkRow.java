package org.espalier.interchange;

import java.util.Optional;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.PixelScale;
import org.espalier.science.quantity.Side;

/** One good row of a landmark file, with the line it stood in. */
record LandmarkRow(
        long line, String film, Side side, Optional<PixelScale> scale, Landmark landmark, PixelPoint point) {}
