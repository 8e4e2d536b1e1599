package org.espalier.science.growth;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Length;

/**
 * Between which days a plate can be placed so that growth takes the joint to its target.
 *
 * <pre>
 * growth needed = W · tan(angle left) / part of the full turn that a plate brings about
 * last day      : no more growth is left than that, with 0.8 of the full turn (it comes out even)
 * by            : the same with 0.55, slow growth and a slack plate together: 0.8 · (1 − √(0.19² + 0.25²))
 * not before    : at the middle rate the target is reached two years before growth ends; earlier, more than two years
 *                 are left in which the angle can come back after release
 * </pre>
 *
 * <p>Of several ways to reckon growth the one with the earliest "by" decides. Source: geometry of
 * {@link CorrectionGeometry}; parts judged from observed rates; two years, where more drift was seen (64 limbs, J
 * Pediatr Orthop 2018;38:365).
 */
public sealed interface PlateWindow {

    /**
     * The dates.
     *
     * @param notBefore empty where the target needs more growth than that leaves, so that earlier is only better
     * @param by the last day for a slow limb
     * @param evenly the last day for a limb of the middle rate, not before {@code by}
     * @param decidedBy the way of reckoning growth
     * @param isWidthAssumed whether the plate's width was not measured
     */
    record Dates(
            Optional<LocalDate> notBefore,
            LocalDate by,
            LocalDate evenly,
            GrowthMethod decidedBy,
            boolean isWidthAssumed)
            implements PlateWindow {

        /** Whether a plate placed on this day still reaches the target in a slow limb. */
        public boolean isOpen(LocalDate day) {
            return !day.isAfter(by);
        }

        /** Whether a plate placed on this day no longer reaches the target even at the middle rate. */
        public boolean isClosed(LocalDate day) {
            return day.isAfter(evenly);
        }
    }

    /** No dates, and why. */
    record None(Reason reason) implements PlateWindow {}

    /** Why there are no dates. */
    enum Reason {
        /** Nothing is left to correct. */
        AT_TARGET,
        /** A heavy child from ten on without a bone age of the last six months. */
        BONE_AGE_WANTED,
        /** More than a growth plate gives from the youngest age of the tables on. */
        MORE_THAN_GROWTH_GIVES,
        /** Neither measured nor assumed. */
        WIDTH_UNKNOWN
    }

    /** By what part growth and plate may fall short together. */
    double SHORTFALL = Math.hypot(
            1 - CorrectionGeometry.LEAST_EFFICIENCY / CorrectionGeometry.EFFICIENCY, GrowthCurve.MODEL_ERROR);

    /** Years of growth after release that are thought little enough. */
    double YEARS_LEFT_AT_TARGET = 2;

    /**
     * The window of one plate.
     *
     * @param age the child's
     * @param curves growth of the plate by each way of reckoning, at least one
     * @param width of the plate
     * @param left degrees left to the target, below 90; not above 0 means at the target
     * @throws IllegalArgumentException if there is no curve or the angle is 90 degrees or more
     */
    static PlateWindow of(GrowthAge age, List<GrowthCurve> curves, Optional<PhysisWidth> width, Angle left) {
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("A window is reckoned from growth");
        }
        if (left.degrees() <= 0) {
            return new None(Reason.AT_TARGET);
        }
        if (age.isBoneAgeWanted()) {
            return new None(Reason.BONE_AGE_WANTED);
        }
        return width.map(known -> of(age, curves, known, left)).orElseGet(() -> new None(Reason.WIDTH_UNKNOWN));
    }

    private static PlateWindow of(GrowthAge age, List<GrowthCurve> curves, PhysisWidth width, Angle left) {
        Length full = CorrectionGeometry.growthFor(left, width.length());
        return curves.stream()
                .flatMap(curve -> of(age, curve, full, width.isAssumed()).stream())
                .min(Comparator.comparing(Dates::by))
                .<PlateWindow>map(dates -> dates)
                .orElseGet(() -> new None(Reason.MORE_THAN_GROWTH_GIVES));
    }

    private static Optional<Dates> of(GrowthAge age, GrowthCurve curve, Length full, boolean isWidthAssumed) {
        double middle = full.millimetres() / CorrectionGeometry.EFFICIENCY;
        OptionalDouble evenly = curve.yearsWhenLeft(new Length(middle));
        OptionalDouble by = curve.yearsWhenLeft(new Length(middle / (1 - SHORTFALL)));
        if (evenly.isEmpty() || by.isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = age.dayAt(by.getAsDouble());
        return Optional.of(new Dates(
                notBefore(age, curve, middle).filter(day -> day.isBefore(last)),
                last,
                age.dayAt(evenly.getAsDouble()),
                curve.method(),
                isWidthAssumed));
    }

    private static Optional<LocalDate> notBefore(GrowthAge age, GrowthCurve curve, double needed) {
        double twoYearsLeft = Maturity.of(age).years() - YEARS_LEFT_AT_TARGET;
        double spared = curve.leftAtYears(twoYearsLeft);
        OptionalDouble years = curve.yearsWhenLeft(new Length(needed + spared));
        return years.isPresent() ? Optional.of(age.dayAt(years.getAsDouble())) : Optional.empty();
    }
}
