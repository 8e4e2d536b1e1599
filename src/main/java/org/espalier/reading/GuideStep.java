package org.espalier.reading;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.LandmarkGuide;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * One step of the guided order as the film room shows it: what to set, a sentence where, and the small drawing beside it.
 *
 * @param kind {@code point} for one point, {@code circle} for points on an edge
 * @param least how many edge points a circle needs
 * @param optional whether it may be passed over without leaving the frontal axes incomplete
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record GuideStep(
        @Nullable Side side,
        String landmark,
        String label,
        String sentence,
        String drawing,
        String kind,
        @Nullable Integer least,
        boolean optional) {

    private static final int LEAST_EDGE_POINTS = 5;

    /** The ball first when it gives the scale, then what the axes need of each limb, then what may be passed over. */
    public static List<GuideStep> of(ReadingSettings settings) {
        var steps = new ArrayList<GuideStep>();
        if (settings.calibration() == CalibrationChoice.BALL) {
            steps.add(of(null, EdgePoints.BALL, true, false));
        }
        for (boolean core : List.of(true, false)) {
            for (Side side : settings.limbs()) {
                LandmarkGuide.frontal().stream()
                        .filter(step -> step.isCore() == core)
                        .forEach(step -> steps.add(of(
                                side,
                                step.landmark().code(),
                                step.placing() == LandmarkGuide.Placing.EDGE_OF_CIRCLE,
                                !core)));
            }
        }
        return List.copyOf(steps);
    }

    private static GuideStep of(@Nullable Side side, String landmark, boolean circle, boolean optional) {
        return new GuideStep(
                side,
                landmark,
                Texts.text("reading.landmark." + landmark),
                Texts.text("reading.sentence." + landmark),
                landmark,
                circle ? "circle" : "point",
                circle ? LEAST_EDGE_POINTS : null,
                optional);
    }
}
