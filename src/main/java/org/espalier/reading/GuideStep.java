package org.espalier.reading;

import static org.espalier.science.alignment.Landmark.*;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.espalier.kit.Texts;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LandmarkGuide;
import org.espalier.science.exposure.FilmConditions;
import org.espalier.science.quantity.Side;
import org.jspecify.annotations.Nullable;

/**
 * One step of the guided order as the film room shows it: what to set, a sentence where, and the small drawing beside
 * it.
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
    private static final Set<Landmark> SHAFTS =
            Set.of(FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL, TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL);
    private static final Set<Landmark> JOINT_SURFACES =
            Set.of(CONDYLE_MEDIAL, CONDYLE_LATERAL, PLATEAU_MEDIAL, PLATEAU_LATERAL);
    private static final Set<Landmark> PHYSES =
            Set.of(FEMUR_PHYSIS_MEDIAL, FEMUR_PHYSIS_LATERAL, TIBIA_PHYSIS_MEDIAL, TIBIA_PHYSIS_LATERAL);

    /** The ball first when it gives the scale, then what the axes need of each limb, then what may be passed over. */
    public static List<GuideStep> of(ReadingSettings settings) {
        var steps = new ArrayList<GuideStep>();
        if (settings.calibration() == CalibrationChoice.BALL) {
            steps.add(of(null, EdgePoints.BALL, true, false));
        }
        for (boolean needed : List.of(true, false)) {
            for (Side side : settings.limbs()) {
                stepsOf(settings)
                        .filter(step -> isNeeded(step, settings) == needed)
                        .filter(step -> SHAFTS.contains(step.landmark()) || settings.asks(side, step.landmark()))
                        .forEach(step -> steps.add(of(
                                side,
                                step.landmark().code(),
                                step.placing() == LandmarkGuide.Placing.EDGE_OF_CIRCLE,
                                !needed)));
            }
        }
        return List.copyOf(steps);
    }

    /** Of a film from the side, the shafts that its angles are measured against come first. */
    private static Stream<LandmarkGuide.Step> stepsOf(ReadingSettings settings) {
        var steps = settings.families().stream().flatMap(family -> LandmarkGuide.steps(family).stream());
        return settings.taken().fromTheSide()
                ? Stream.concat(
                        LandmarkGuide.frontal().stream().filter(step -> SHAFTS.contains(step.landmark())), steps)
                : steps;
    }

    /**
     * What was asked for beyond the frontal set is. While the joint surfaces are not bone, the physeal lines take their
     * place.
     */
    private static boolean isNeeded(LandmarkGuide.Step step, ReadingSettings settings) {
        var taken = settings.taken();
        if (taken.fromTheSide() || step.landmark().family() != Landmark.Family.FRONTAL) {
            return true;
        }
        boolean unossified = taken.ossification() == FilmConditions.Ossification.UNOSSIFIED;
        boolean joint = unossified && taken.contrast() != Seen.YES && JOINT_SURFACES.contains(step.landmark());
        return (step.isCore() && !joint) || (unossified && PHYSES.contains(step.landmark()));
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
