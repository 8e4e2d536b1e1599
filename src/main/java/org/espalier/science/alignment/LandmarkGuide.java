package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The order in which the landmarks of one limb are set: from the hip down, as the eye travels. Every landmark has one
 * step.
 */
public final class LandmarkGuide {

    private static final Set<Landmark> CORE = Set.of(
            HIP_CENTRE,
            CONDYLE_MEDIAL,
            CONDYLE_LATERAL,
            PLATEAU_MEDIAL,
            PLATEAU_LATERAL,
            PLAFOND_MEDIAL,
            PLAFOND_LATERAL);

    private static final List<Step> STEPS =
            Arrays.stream(Landmark.values()).map(LandmarkGuide::step).toList();

    /** The part of the limb that steps following each other belong to. */
    public enum Region {
        /** Femoral head and trochanter. */
        HIP,
        /** Shaft of the femur. */
        FEMUR_SHAFT,
        /** Distal femur. */
        FEMUR_LOWER_END,
        /** Proximal tibia. */
        TIBIA_UPPER_END,
        /** Shaft of the tibia. */
        TIBIA_SHAFT,
        /** Tibial plafond. */
        ANKLE;

        /** The key of its text, as in {@code region.hip}. */
        public String key() {
            return "region." + name().toLowerCase(Locale.ROOT);
        }
    }

    /** How a step is carried out. */
    public enum Placing {
        /** One point is set. */
        POINT,
        /** Points are set along a round edge; the landmark is the centre of the circle fitted to them. */
        EDGE_OF_CIRCLE
    }

    /**
     * One step of the guide.
     *
     * @param landmark what is set
     * @param region where on the limb
     * @param placing how it is set
     * @param isCore whether the frontal axes and joint lines need it; the others can be passed over
     */
    public record Step(Landmark landmark, Region region, Placing placing, boolean isCore) {

        /** The key of its sentence, as in {@code landmark.hip_centre}. */
        public String key() {
            return "landmark." + landmark.code();
        }
    }

    private LandmarkGuide() {}

    /** Every step of one limb, in order. */
    public static List<Step> frontal() {
        return STEPS;
    }

    /** The next step whose landmark is not set; empty once all are. */
    public static Optional<Step> nextOf(LimbLandmarks landmarks) {
        return STEPS.stream()
                .filter(step -> landmarks.point(step.landmark()).isEmpty())
                .findFirst();
    }

    private static Step step(Landmark landmark) {
        Placing placing = landmark == HIP_CENTRE ? Placing.EDGE_OF_CIRCLE : Placing.POINT;
        return new Step(landmark, regionOf(landmark), placing, CORE.contains(landmark));
    }

    private static Region regionOf(Landmark landmark) {
        return switch (landmark) {
            case HIP_CENTRE, HEAD_TOP, TROCHANTER_TIP -> Region.HIP;
            case FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL -> Region.FEMUR_SHAFT;
            case FEMUR_BEAK_MEDIAL,
                    FEMUR_BEAK_LATERAL,
                    FEMUR_PHYSIS_MEDIAL,
                    FEMUR_PHYSIS_LATERAL,
                    CONDYLE_MEDIAL,
                    CONDYLE_LATERAL -> Region.FEMUR_LOWER_END;
            case PLATEAU_MEDIAL,
                    PLATEAU_LATERAL,
                    TIBIA_PHYSIS_MEDIAL,
                    TIBIA_PHYSIS_LATERAL,
                    BEAK_MEDIAL,
                    BEAK_LATERAL -> Region.TIBIA_UPPER_END;
            case TIBIA_SHAFT_PROXIMAL, TIBIA_SHAFT_DISTAL -> Region.TIBIA_SHAFT;
            case PLAFOND_MEDIAL, PLAFOND_LATERAL -> Region.ANKLE;
        };
    }
}
