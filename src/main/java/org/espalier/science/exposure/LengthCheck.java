package org.espalier.science.exposure;

import java.util.ArrayList;
import java.util.List;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.alignment.ReaderError;
import org.espalier.science.growth.LengthForAge;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Length;
import org.espalier.science.quantity.Sex;

/**
 * Whether the lengths of one limb fit the child's age and an earlier film.
 *
 * <p>Bones do not shrink: a femur 6.4 mm or a tibia 4.4 mm shorter than before (√2 times the published half-widths of
 * one reading) asks for calibration, flexion or the wrong child. The ratio of both bones does not depend on the scale:
 * when it has changed by more than reading could, no calibration explains it. Judged: 4 standard deviations of the
 * table for age, and a ratio of 0.6 to 1.
 *
 * @param femur hip centre to knee, above 0
 * @param tibia knee to ankle centre, above 0
 */
public record LengthCheck(Length femur, Length tibia) {

    private static final double UNLIKELY = 4;
    private static final double LEAST_RATIO = 0.6;
    private static final double LARGEST_RATIO = 1;

    /** What was found. */
    public enum Finding {
        /** Femur far from the lengths of its age: age, calibration, or a short or tall child. */
        FEMUR_UNLIKELY_FOR_AGE,
        /** Tibia likewise. */
        TIBIA_UNLIKELY_FOR_AGE,
        /** The tibia is too short or too long for the femur: a point on the wrong place. */
        PROPORTIONS_IMPOSSIBLE,
        /** Femur shorter than on the earlier film: calibration, flexion or the wrong child. */
        FEMUR_SHRANK,
        /** Tibia likewise. */
        TIBIA_SHRANK,
        /** A bone shrank, and the ratio of both changed, which no calibration explains. */
        PROBABLY_ANOTHER_CHILD;

        /** Whether lengths of the later film leave the trend; angles stay. */
        public boolean takesLengthsFromTrend() {
            return this == FEMUR_SHRANK || this == TIBIA_SHRANK || this == PROBABLY_ANOTHER_CHILD;
        }
    }

    /**
     * Checks the lengths.
     *
     * @throws IllegalArgumentException if either is not above 0
     */
    public LengthCheck {
        if (!(femur.millimetres() > 0 && tibia.millimetres() > 0)) {
            throw new IllegalArgumentException("Bones have a length, not " + femur + " and " + tibia);
        }
    }

    /** Against the lengths of age and sex; outside 1 to 18 years the ratio alone. */
    public List<Finding> forAge(Sex sex, Age age) {
        List<Finding> findings = new ArrayList<>();
        if (isUnlikely(LengthForAge.Bone.FEMUR, sex, age, femur)) {
            findings.add(Finding.FEMUR_UNLIKELY_FOR_AGE);
        }
        if (isUnlikely(LengthForAge.Bone.TIBIA, sex, age, tibia)) {
            findings.add(Finding.TIBIA_UNLIKELY_FOR_AGE);
        }
        if (ratio() < LEAST_RATIO || ratio() > LARGEST_RATIO) {
            findings.add(Finding.PROPORTIONS_IMPOSSIBLE);
        }
        return List.copyOf(findings);
    }

    /** Against the same limb on an earlier film; no bone was shortened by operation between. */
    public List<Finding> since(LengthCheck earlier) {
        List<Finding> findings = new ArrayList<>();
        if (earlier.femur.minus(femur).millimetres() >= shrinkage(Quantity.FEMUR_LENGTH)) {
            findings.add(Finding.FEMUR_SHRANK);
        }
        if (earlier.tibia.minus(tibia).millimetres() >= shrinkage(Quantity.TIBIA_LENGTH)) {
            findings.add(Finding.TIBIA_SHRANK);
        }
        if (!findings.isEmpty() && hasOtherRatioThan(earlier)) {
            findings.add(Finding.PROBABLY_ANOTHER_CHILD);
        }
        return List.copyOf(findings);
    }

    private boolean hasOtherRatioThan(LengthCheck earlier) {
        double error = earlier.ratio()
                * Math.hypot(
                        shrinkage(Quantity.FEMUR_LENGTH) / earlier.femur.millimetres(),
                        shrinkage(Quantity.TIBIA_LENGTH) / earlier.tibia.millimetres());
        return Math.abs(ratio() - earlier.ratio()) > error;
    }

    private double ratio() {
        return tibia.millimetres() / femur.millimetres();
    }

    private static boolean isUnlikely(LengthForAge.Bone bone, Sex sex, Age age, Length length) {
        return LengthForAge.z(bone, sex, age, length)
                .filter(z -> Math.abs(z) > UNLIKELY)
                .isPresent();
    }

    /** As shown, to 0.1 mm. */
    private static double shrinkage(Quantity quantity) {
        return Math.round(10 * ReaderError.halfWidth95OfChange(quantity).orElseThrow()) / 10.0;
    }
}
