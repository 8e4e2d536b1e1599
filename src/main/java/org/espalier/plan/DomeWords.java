package org.espalier.plan;

import org.espalier.kit.Texts;
import org.espalier.science.planning.Dome;
import org.espalier.science.quantity.Angle;

/** What is said of a round cut. */
final class DomeWords {

    private DomeWords() {}

    /** Its numbers in one sentence. */
    static String of(Dome dome, Angle turn) {
        return Texts.text(
                "plan.dome",
                dome.radius().millimetres(),
                dome.width().millimetres(),
                dome.depth().millimetres(),
                dome.slide(turn).millimetres(),
                100 * dome.contact(turn));
    }
}
