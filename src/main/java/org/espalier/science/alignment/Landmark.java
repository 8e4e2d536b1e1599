package org.espalier.science.alignment;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A point a reader sets on a film of one limb, each family from the hip down.
 *
 * <p>Medial and lateral are the child's own; nothing is taken from where a point lies on the film.
 */
public enum Landmark {
    /** Centre of the ossified femoral head. */
    HIP_CENTRE,
    /** Most proximal point of the femoral head. */
    HEAD_TOP,
    /** Tip of the greater trochanter. */
    TROCHANTER_TIP,
    /** Middle of the femoral shaft, proximally. */
    FEMUR_SHAFT_PROXIMAL,
    /** Middle of the femoral shaft, distally. */
    FEMUR_SHAFT_DISTAL,
    /** Medial corner of the distal femoral metaphysis. */
    FEMUR_BEAK_MEDIAL,
    /** Lateral corner of the distal femoral metaphysis. */
    FEMUR_BEAK_LATERAL,
    /** Medial end of the distal femoral physis. */
    FEMUR_PHYSIS_MEDIAL,
    /** Lateral end of the distal femoral physis. */
    FEMUR_PHYSIS_LATERAL,
    /** Most distal point of the medial femoral condyle. */
    CONDYLE_MEDIAL,
    /** Most distal point of the lateral femoral condyle. */
    CONDYLE_LATERAL,
    /** Medial end of the tibial plateau line. */
    PLATEAU_MEDIAL,
    /** Lateral end of the tibial plateau line. */
    PLATEAU_LATERAL,
    /** Medial end of the proximal tibial physis. */
    TIBIA_PHYSIS_MEDIAL,
    /** Lateral end of the proximal tibial physis. */
    TIBIA_PHYSIS_LATERAL,
    /** Medial corner (beak) of the proximal tibial metaphysis. */
    BEAK_MEDIAL,
    /** Lateral corner of the proximal tibial metaphysis. */
    BEAK_LATERAL,
    /** Middle of the tibial shaft, proximally. */
    TIBIA_SHAFT_PROXIMAL,
    /** Middle of the tibial shaft, distally. */
    TIBIA_SHAFT_DISTAL,
    /** Medial end of the tibial plafond. */
    PLAFOND_MEDIAL,
    /** Lateral end of the tibial plafond. */
    PLAFOND_LATERAL,
    /** Medial end of the base of the proximal tibial ossification centre. */
    EPIPHYSIS_BASE_MEDIAL(Family.FURTHER),
    /** Lateral end of the base of the proximal tibial ossification centre. */
    EPIPHYSIS_BASE_LATERAL(Family.FURTHER),
    /** Inner end of the medial plateau, beside the spine. */
    PLATEAU_MEDIAL_INNER(Family.FURTHER),
    /** Inner end of the lateral plateau, beside the spine. */
    PLATEAU_LATERAL_INNER(Family.FURTHER),
    /** Lateral border of the tibial cortex, proximally. */
    TIBIA_CORTEX_PROXIMAL(Family.FURTHER),
    /** Lateral border of the tibial cortex, distally. */
    TIBIA_CORTEX_DISTAL(Family.FURTHER),
    /** Middle of the patella. */
    PATELLA_CENTRE(Family.FURTHER),
    /** Middle of the fibular head. */
    FIBULA_HEAD(Family.FURTHER),
    /** Head of the metaphyseal screw at the distal femoral physis. */
    FEMUR_METAPHYSIS_SCREW_HEAD(Family.IMPLANT),
    /** Entry into the bone of the metaphyseal screw at the distal femoral physis. */
    FEMUR_METAPHYSIS_SCREW_ENTRY(Family.IMPLANT),
    /** Tip of the metaphyseal screw at the distal femoral physis. */
    FEMUR_METAPHYSIS_SCREW_TIP(Family.IMPLANT),
    /** Head of the epiphyseal screw at the distal femoral physis. */
    FEMUR_EPIPHYSIS_SCREW_HEAD(Family.IMPLANT),
    /** Entry into the bone of the epiphyseal screw at the distal femoral physis. */
    FEMUR_EPIPHYSIS_SCREW_ENTRY(Family.IMPLANT),
    /** Tip of the epiphyseal screw at the distal femoral physis. */
    FEMUR_EPIPHYSIS_SCREW_TIP(Family.IMPLANT),
    /** Proximal end of the plate at the distal femoral physis. */
    FEMUR_PLATE_PROXIMAL(Family.IMPLANT),
    /** Distal end of the plate at the distal femoral physis. */
    FEMUR_PLATE_DISTAL(Family.IMPLANT),
    /** Head of the metaphyseal screw at the proximal tibial physis. */
    TIBIA_METAPHYSIS_SCREW_HEAD(Family.IMPLANT),
    /** Entry into the bone of the metaphyseal screw at the proximal tibial physis. */
    TIBIA_METAPHYSIS_SCREW_ENTRY(Family.IMPLANT),
    /** Tip of the metaphyseal screw at the proximal tibial physis. */
    TIBIA_METAPHYSIS_SCREW_TIP(Family.IMPLANT),
    /** Head of the epiphyseal screw at the proximal tibial physis. */
    TIBIA_EPIPHYSIS_SCREW_HEAD(Family.IMPLANT),
    /** Entry into the bone of the epiphyseal screw at the proximal tibial physis. */
    TIBIA_EPIPHYSIS_SCREW_ENTRY(Family.IMPLANT),
    /** Tip of the epiphyseal screw at the proximal tibial physis. */
    TIBIA_EPIPHYSIS_SCREW_TIP(Family.IMPLANT),
    /** Proximal end of the plate at the proximal tibial physis. */
    TIBIA_PLATE_PROXIMAL(Family.IMPLANT),
    /** Distal end of the plate at the proximal tibial physis. */
    TIBIA_PLATE_DISTAL(Family.IMPLANT),
    /** Middle of the femoral shaft at its bend, between the proximal and the distal point. */
    FEMUR_SHAFT_BEND(Family.FROM_THE_SIDE),
    /** Anterior end of the distal femoral physis. */
    FEMUR_PHYSIS_ANTERIOR(Family.FROM_THE_SIDE),
    /** Posterior end of the distal femoral physis. */
    FEMUR_PHYSIS_POSTERIOR(Family.FROM_THE_SIDE),
    /** Anterior end of the tibial plateau. */
    PLATEAU_ANTERIOR(Family.FROM_THE_SIDE),
    /** Posterior end of the tibial plateau. */
    PLATEAU_POSTERIOR(Family.FROM_THE_SIDE),
    /** Middle of the tibial shaft at its bend, between the proximal and the distal point. */
    TIBIA_SHAFT_BEND(Family.FROM_THE_SIDE),
    /** Anterior end of the tibial plafond. */
    PLAFOND_ANTERIOR(Family.FROM_THE_SIDE),
    /** Posterior end of the tibial plafond. */
    PLAFOND_POSTERIOR(Family.FROM_THE_SIDE);

    private final Family family;

    /** What a landmark is set for. */
    public enum Family {
        /** The frontal axes, joint lines and metaphyses. */
        FRONTAL,
        /** More on a frontal film, when asked for. */
        FURTHER,
        /** An implant on a frontal film. */
        IMPLANT,
        /** A film from the side; it shares the shaft points with frontal films. */
        FROM_THE_SIDE
    }

    Landmark() {
        this(Family.FRONTAL);
    }

    Landmark(Family family) {
        this.family = family;
    }

    private static final Map<String, Landmark> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Landmark::code, Function.identity()));

    /** What it is set for. */
    public Family family() {
        return family;
    }

    /** The name used in files and requests, as in {@code hip_centre}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The landmark that a file's name means; empty if none bears it. */
    public static Optional<Landmark> ofCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}
