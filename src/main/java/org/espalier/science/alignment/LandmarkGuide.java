package org.espalier.science.alignment;

import static org.espalier.science.alignment.Landmark.*;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * The order in which the landmarks of one limb are set: from the hip down, as the eye travels. Every landmark has one
 * step, in the list of its family.
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

    private static final Set<Landmark> AT_FEMUR_END = Set.of(
            FEMUR_BEAK_MEDIAL,
            FEMUR_BEAK_LATERAL,
            FEMUR_PHYSIS_MEDIAL,
            FEMUR_PHYSIS_LATERAL,
            CONDYLE_MEDIAL,
            CONDYLE_LATERAL,
            PATELLA_CENTRE,
            FEMUR_METAPHYSIS_SCREW_HEAD,
            FEMUR_METAPHYSIS_SCREW_ENTRY,
            FEMUR_METAPHYSIS_SCREW_TIP,
            FEMUR_EPIPHYSIS_SCREW_HEAD,
            FEMUR_EPIPHYSIS_SCREW_ENTRY,
            FEMUR_EPIPHYSIS_SCREW_TIP,
            FEMUR_PLATE_PROXIMAL,
            FEMUR_PLATE_DISTAL,
            FEMUR_PHYSIS_ANTERIOR,
            FEMUR_PHYSIS_POSTERIOR);

    private static final List<Step> STEPS = steps(Landmark.Family.FRONTAL);

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

    /** Every step of a family, in order; none but those of the frontal family is ever asked for unbidden. */
    public static List<Step> steps(Landmark.Family family) {
        return Arrays.stream(Landmark.values())
                .filter(landmark -> landmark.family() == family)
                .map(LandmarkGuide::step)
                .toList();
    }

    /** The next frontal step whose landmark is not set; empty once all are. */
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
            case FEMUR_SHAFT_PROXIMAL, FEMUR_SHAFT_DISTAL, FEMUR_SHAFT_BEND -> Region.FEMUR_SHAFT;
            case TIBIA_SHAFT_PROXIMAL,
                    TIBIA_SHAFT_DISTAL,
                    TIBIA_CORTEX_PROXIMAL,
                    TIBIA_CORTEX_DISTAL,
                    TIBIA_SHAFT_BEND -> Region.TIBIA_SHAFT;
            case PLAFOND_MEDIAL, PLAFOND_LATERAL, PLAFOND_ANTERIOR, PLAFOND_POSTERIOR -> Region.ANKLE;
            default -> AT_FEMUR_END.contains(landmark) ? Region.FEMUR_LOWER_END : Region.TIBIA_UPPER_END;
        };
    }
}
