package org.espalier.demo;

import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.science.quantity.Side;

/**
 * Something a surgeon did to one physis.
 *
 * @param ageMonths of the child that day
 */
record DemoDeed(int ageMonths, What what, Side side, DrawnPlate.Bone bone, DrawnPlate.Face face) {

    /** What was done. */
    enum What {
        PLATE_PLACED,
        METAPHYSEAL_SCREW_OUT,
        PLATE_OUT,
        OSTEOTOMY,
        FRAME_ON,
        FRAME_OFF
    }
}
