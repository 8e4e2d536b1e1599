package org.espalier.science.alignment;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A point a reader sets on a frontal film of one limb, from the hip down.
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
    PLAFOND_LATERAL;

    private static final Map<String, Landmark> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Landmark::code, Function.identity()));

    /** The name used in files and requests, as in {@code hip_centre}. */
    public String code() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The landmark that a file's name means; empty if none bears it. */
    public static Optional<Landmark> ofCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}
