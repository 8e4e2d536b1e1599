package org.espalier.science.alignment;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.science.alignment.Landmark.Family;

/**
 * A number read from the landmarks of one limb, in the order in which numbers are listed.
 *
 * <p>Source: Paley, Principles of Deformity Correction, 2002, chapter 1 (lines and angles, partly from memory); Levine
 * and Drennan, J Bone Joint Surg Am 1982;64:1158 (metaphyseal-diaphyseal angle); Davids, Blackhurst and Allen, J
 * Pediatr Orthop 2001;21:257 (EMA, its construction from memory).
 */
public enum Quantity {
    /** Lateral angle of the femoral mechanical axis and the condyle line. */
    MLDFA("mLDFA", Unit.DEGREES),
    /** Medial angle of the tibial mechanical axis and the plateau line. */
    MMPTA("mMPTA", Unit.DEGREES),
    /** Lateral angle of the tibial mechanical axis and the plafond line. */
    LDTA("LDTA", Unit.DEGREES),
    /** Lateral angle of the femoral mechanical axis and the line from trochanter tip to hip centre. */
    LPFA("LPFA", Unit.DEGREES),
    /** Lateral angle of the femoral shaft line and the condyle line. */
    ALDFA("aLDFA", Unit.DEGREES),
    /** Angle of the joint lines, positive where the joint opens laterally. */
    JLCA("JLCA", Unit.DEGREES),
    /** Deviation of the tibial from the femoral mechanical axis, positive in varus. */
    HKA("HKA", Unit.DEGREES),
    /** mLDFA less mMPTA, positive in varus: the deformity in the bones, without the joint's laxity. */
    BONY_HKA("BONY_HKA", Unit.DEGREES),
    /** Angle between the shaft lines, positive in valgus. */
    ATFA("aTFA", Unit.DEGREES),
    /** Distance of the knee centre from the line hip to ankle, negative where that line passes medially. */
    MAD("MAD", Unit.MILLIMETRES),
    /** Where the line hip to ankle crosses the plateau line: 0 at its medial, 100 at its lateral end. */
    WBL("WBL", Unit.PERCENT),
    /** Plateau midpoint against condyle midpoint along the plateau line, positive where the tibia lies lateral. */
    KNEE_OFFSET("KNEE_OFFSET", Unit.MILLIMETRES),
    /** Tibial beak line against the perpendicular of the tibial shaft, positive in varus. */
    MDA("MDA", Unit.DEGREES),
    /** Femoral beak line against the perpendicular of the femoral shaft, positive in varus. */
    FMDA("FMDA", Unit.DEGREES),
    /** As mLDFA, with the physeal line in place of the joint line; never to be trended with mLDFA. */
    FEMUR_PHYSIS_ANGLE("FEMUR_PHYSIS_ANGLE", Unit.DEGREES),
    /** As mMPTA, with the physeal line in place of the joint line; never to be trended with mMPTA. */
    TIBIA_PHYSIS_ANGLE("TIBIA_PHYSIS_ANGLE", Unit.DEGREES),
    /** Hip centre to condyle midpoint. */
    FEMUR_LENGTH("FEMUR_LENGTH", Unit.MILLIMETRES),
    /** Plateau midpoint to ankle centre. */
    TIBIA_LENGTH("TIBIA_LENGTH", Unit.MILLIMETRES),
    /** Hip centre to ankle centre. */
    LIMB_LENGTH("LIMB_LENGTH", Unit.MILLIMETRES),
    /** Between the ends of the distal femoral physis. */
    FEMUR_PHYSIS_WIDTH("FEMUR_PHYSIS_WIDTH", Unit.MILLIMETRES),
    /** Between the ends of the proximal tibial physis. */
    TIBIA_PHYSIS_WIDTH("TIBIA_PHYSIS_WIDTH", Unit.MILLIMETRES),
    /** mLDFA less aLDFA: angle of the mechanical axis and the shaft line of the femur. */
    AMA("AMA", Unit.DEGREES, Family.FURTHER),
    /**
     * As MDA, with the lateral border of the tibial cortex in place of the mid-shaft line: the line of the original
     * paper.
     */
    MDA_CORTEX("MDA_CORTEX", Unit.DEGREES, Family.FURTHER),
    /** Base of the tibial ossification centre against the line from its middle to the medial beak. */
    EMA("EMA", Unit.DEGREES, Family.FURTHER),
    /** Medial plateau against the perpendicular of the tibial axis, positive where its outer end lies lower. */
    MEDIAL_PLATEAU_SLOPE("MEDIAL_PLATEAU_SLOPE", Unit.DEGREES, Family.FURTHER),
    /** Lateral plateau against the perpendicular of the tibial axis, positive where its outer end lies lower. */
    LATERAL_PLATEAU_SLOPE("LATERAL_PLATEAU_SLOPE", Unit.DEGREES, Family.FURTHER),
    /** Angle of medial and lateral plateau, positive where they slope down outwards: the sum of both slopes. */
    PLATEAU_DEPRESSION("PLATEAU_DEPRESSION", Unit.DEGREES, Family.FURTHER),
    /** Where the patella lies along the condyle line: 0 at its medial, 100 at its lateral point. */
    PATELLA_POSITION("PATELLA_POSITION", Unit.PERCENT, Family.FURTHER),
    /** Where the fibular head lies along the plateau line: 0 at its medial, 100 at its lateral end. */
    FIBULA_POSITION("FIBULA_POSITION", Unit.PERCENT, Family.FURTHER),
    /** Top of the femoral head to the most distal point of the medial condyle: not the mechanical length. */
    FEMUR_FILM_LENGTH("FEMUR_FILM_LENGTH", Unit.MILLIMETRES, Family.FURTHER),
    /** Medial plateau to the middle of the plafond: not the mechanical length. */
    TIBIA_FILM_LENGTH("TIBIA_FILM_LENGTH", Unit.MILLIMETRES, Family.FURTHER),
    /** Top of the femoral head to the middle of the plafond: not the sum of both bones. */
    LIMB_FILM_LENGTH("LIMB_FILM_LENGTH", Unit.MILLIMETRES, Family.FURTHER),
    /**
     * Angle between both screws at the distal femoral physis, positive where their tips stand wider than their heads.
     */
    FEMUR_SCREW_ANGLE("FEMUR_SCREW_ANGLE", Unit.DEGREES, Family.IMPLANT),
    /** Head to entry of the metaphyseal screw at the distal femoral physis. */
    FEMUR_METAPHYSIS_SCREW_EXPOSED("FEMUR_METAPHYSIS_SCREW_EXPOSED", Unit.MILLIMETRES, Family.IMPLANT),
    /** Head to entry of the epiphyseal screw at the distal femoral physis. */
    FEMUR_EPIPHYSIS_SCREW_EXPOSED("FEMUR_EPIPHYSIS_SCREW_EXPOSED", Unit.MILLIMETRES, Family.IMPLANT),
    /** Between the ends of the plate at the distal femoral physis. */
    FEMUR_PLATE_LENGTH("FEMUR_PLATE_LENGTH", Unit.MILLIMETRES, Family.IMPLANT),
    /**
     * Angle between both screws at the proximal tibial physis, positive where their tips stand wider than their heads.
     */
    TIBIA_SCREW_ANGLE("TIBIA_SCREW_ANGLE", Unit.DEGREES, Family.IMPLANT),
    /** Head to entry of the metaphyseal screw at the proximal tibial physis. */
    TIBIA_METAPHYSIS_SCREW_EXPOSED("TIBIA_METAPHYSIS_SCREW_EXPOSED", Unit.MILLIMETRES, Family.IMPLANT),
    /** Head to entry of the epiphyseal screw at the proximal tibial physis. */
    TIBIA_EPIPHYSIS_SCREW_EXPOSED("TIBIA_EPIPHYSIS_SCREW_EXPOSED", Unit.MILLIMETRES, Family.IMPLANT),
    /** Between the ends of the plate at the proximal tibial physis. */
    TIBIA_PLATE_LENGTH("TIBIA_PLATE_LENGTH", Unit.MILLIMETRES, Family.IMPLANT),
    /** Posterior angle of the femoral shaft line and the distal femoral physis. */
    PDFA("PDFA", Unit.DEGREES, Family.FROM_THE_SIDE),
    /** Posterior angle of the tibial shaft line and the plateau. */
    PPTA("PPTA", Unit.DEGREES, Family.FROM_THE_SIDE),
    /** Anterior angle of the tibial shaft line and the plafond. */
    ADTA("ADTA", Unit.DEGREES, Family.FROM_THE_SIDE),
    /** Bend of the femoral shaft, positive with its apex in front. */
    FEMUR_PROCURVATUM("FEMUR_PROCURVATUM", Unit.DEGREES, Family.FROM_THE_SIDE),
    /** Bend of the tibial shaft, positive with its apex in front. */
    TIBIA_PROCURVATUM("TIBIA_PROCURVATUM", Unit.DEGREES, Family.FROM_THE_SIDE),
    /** Femoral against tibial shaft line, positive in flexion. */
    KNEE_FLEXION("KNEE_FLEXION", Unit.DEGREES, Family.FROM_THE_SIDE);

    private static final Map<String, Quantity> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Quantity::code, Function.identity()));

    private static final List<Quantity> FRONTAL = Arrays.stream(values())
            .filter(quantity -> quantity.family == Family.FRONTAL)
            .toList();

    private final String code;
    private final Unit unit;
    private final Family family;

    /** The unit a quantity is told in. */
    public enum Unit {
        /** Degrees. */
        DEGREES("deg"),
        /** Millimetres. */
        MILLIMETRES("mm"),
        /** Parts of a hundred. */
        PERCENT("percent");

        private final String code;

        Unit(String code) {
            this.code = code;
        }

        /** The name used in files: deg, mm or percent. */
        public String code() {
            return code;
        }
    }

    Quantity(String code, Unit unit) {
        this(code, unit, Family.FRONTAL);
    }

    Quantity(String code, Unit unit, Family family) {
        this.code = code;
        this.unit = unit;
        this.family = family;
    }

    /** The quantities of the frontal set, in listing order; the others are read when their landmarks are set. */
    public static List<Quantity> frontal() {
        return FRONTAL;
    }

    /** What landmarks it is read from. */
    public Family family() {
        return family;
    }

    /** The name used in files and in print, as in {@code mLDFA}. */
    public String code() {
        return code;
    }

    /** The unit of its values. */
    public Unit unit() {
        return unit;
    }

    /** The quantity that a file's name means; empty if none bears it. */
    public static Optional<Quantity> ofCode(String code) {
        return Optional.ofNullable(BY_CODE.get(code));
    }
}
