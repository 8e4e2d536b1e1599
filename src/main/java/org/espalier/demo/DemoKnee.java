package org.espalier.demo;

import java.util.List;
import org.espalier.demo.drawn.DrawnPlate;
import org.espalier.science.quantity.Angle;

/** What is true of one leg on the day of a film. */
record DemoKnee(Angle mLDFA, Angle mMPTA, Angle jlca, List<DrawnPlate> plates) {

    static DemoKnee of(double mLDFA, double mMPTA, double jlca) {
        return new DemoKnee(new Angle(mLDFA), new Angle(mMPTA), new Angle(jlca), List.of());
    }

    /** The same knee with plates in place. */
    DemoKnee with(List<DrawnPlate> plates) {
        return new DemoKnee(mLDFA, mMPTA, jlca, plates);
    }
}
