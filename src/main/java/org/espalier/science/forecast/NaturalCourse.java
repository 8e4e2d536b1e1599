package org.espalier.science.forecast;

import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.alignment.Norm;
import org.espalier.science.alignment.NormForAge;
import org.espalier.science.alignment.NormMethod;
import org.espalier.science.alignment.NormQuantity;
import org.espalier.science.quantity.Age;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;

/**
 * Where the angle of thigh and leg of a healthy young child goes by itself: it keeps most of its place among children
 * of its age and draws a little nearer to their mean. It does not hold for tibia vara or bone disease: a child that
 * leaves this spread on the bowed side is not following it.
 *
 * <pre>
 * mean(later) + s(later) (k z + √(1 − k²) n)    z the place now, k = exp(−years / 6), n standard normal
 * </pre>
 *
 * <p>Source: mean and spread by age of the first study with a spread, Salenius and Vankka, J Bone Joint Surg Am
 * 1975;57:259 (from memory); how long a place is kept is judged.
 */
public final class NaturalCourse {

    private static final double YEARS_KEPT = 6;

    private NaturalCourse() {}

    /**
     * The spread of the angle at a later age.
     *
     * @param sex the child's
     * @param now age at the measurement
     * @param tibiofemoral the angle then, + valgus, by the shaft lines
     * @param later not younger than now
     * @return in degrees, + valgus; empty where no norm with a spread reaches
     * @throws IllegalArgumentException if later is younger than now
     */
    public static Optional<Spread> tibiofemoral(Sex sex, Age now, Angle tibiofemoral, Age later) {
        if (later.compareTo(now) < 0) {
            throw new IllegalArgumentException("The age " + later + " is younger than " + now);
        }
        return norm(sex, now).flatMap(then -> norm(sex, later).map(norm -> at(then, tibiofemoral, norm, later, now)));
    }

    /**
     * The place of an angle among children of an age.
     *
     * @param tibiofemoral the angle, + valgus, by the shaft lines
     * @return standard deviations from their mean, + towards valgus; empty where no norm with a spread reaches
     */
    public static OptionalDouble place(Sex sex, Age age, Angle tibiofemoral) {
        return norm(sex, age).map(norm -> norm.z(tibiofemoral.degrees())).orElse(OptionalDouble.empty());
    }

    private static Spread at(Norm then, Angle angle, Norm norm, Age later, Age now) {
        double z = then.z(angle.degrees()).orElseThrow();
        double kept = Math.exp(-(later.decimalYears() - now.decimalYears()) / YEARS_KEPT);
        double spread = norm.standardDeviation().orElseThrow();
        return Spread.ofNormal(
                norm.mean().orElseThrow() + spread * kept * z,
                Math.max(spread * Math.sqrt(1 - kept * kept), Double.MIN_NORMAL));
    }

    private static Optional<Norm> norm(Sex sex, Age age) {
        return NormForAge.all(NormQuantity.TIBIOFEMORAL, NormMethod.ANATOMIC_FILM, sex, age).stream()
                .filter(norm ->
                        norm.mean().isPresent() && norm.standardDeviation().isPresent())
                .findFirst();
    }
}
