package org.espalier.science.alignment;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A number read from the landmarks of one limb, in the order in which numbers are listed.
 *
 * <p>Source: Paley, Principles of Deformity Correction, 2002, chapter 1 (lines and angles, partly from memory); Levine
 * and Drennan, J Bone Joint Surg Am 1982;64:1158 (metaphyseal-diaphyseal angle).
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
    TIBIA_PHYSIS_WIDTH("TIBIA_PHYSIS_WIDTH", Unit.MILLIMETRES);

    private static final Map<String, Quantity> BY_CODE =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Quantity::code, Function.identity()));

    private final String code;
    private final Unit unit;

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
        this.code = code;
        this.unit = unit;
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
