package org.espalier.science.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.espalier.science.forecast.TetheredPhysis.Film;
import org.espalier.science.quantity.Sex;

/**
 * Limbs that go exactly as the forecast imagines them, at a centre whose rates are known exactly: no forecaster can do
 * better on them than the forecast itself, but for what its quadrature leaves out.
 */
final class ImaginedLimbs {

    private static final double STEP = 0.05;
    private static final double OUTLYING = 3.5;
    private static final double RIPENESS = 0.9;
    private static final double[] LAGS = {0.2, 1, 2.5};

    /** Kinds of limbs as a clinic sees them: nearly half idiopathic valgus, a fifth tibia vara. */
    private static final Cause[] CAUSES = {
        Cause.IDIOPATHIC_VALGUS,
        Cause.IDIOPATHIC_VALGUS,
        Cause.IDIOPATHIC_VALGUS,
        Cause.IDIOPATHIC_VALGUS,
        Cause.IDIOPATHIC_VARUS,
        Cause.INFANTILE_TIBIA_VARA,
        Cause.LATE_ONSET_TIBIA_VARA,
        Cause.SKELETAL_DYSPLASIA,
        Cause.RICKETS
    };

    private final CentreRates rates;
    private final SplittableRandom chance;

    ImaginedLimbs(CentreRates rates, long seed) {
        this.rates = rates;
        chance = new SplittableRandom(seed);
    }

    /** One limb with the films of some months, the later ones still to come. */
    TetheredPhysis draw(double... months) {
        Cause cause = CAUSES[chance.nextInt(CAUSES.length)];
        boolean vara = cause == Cause.INFANTILE_TIBIA_VARA || cause == Cause.LATE_ONSET_TIBIA_VARA;
        Sex sex = chance.nextBoolean() ? Sex.FEMALE : Sex.MALE;
        double years = cause == Cause.INFANTILE_TIBIA_VARA
                ? 3 + 2 * chance.nextDouble()
                : 8 + 4 * chance.nextDouble() + (sex == Sex.MALE ? 1.5 : 0);
        PhysisSite site = vara ? PhysisSite.PROXIMAL_TIBIA : PhysisSite.DISTAL_FEMUR;
        return new TetheredPhysis(
                site,
                cause,
                sex,
                years,
                OptionalDouble.empty(),
                films(site, cause, sex, years, months),
                OptionalDouble.empty());
    }

    private List<Film> films(PhysisSite site, Cause cause, Sex sex, double years, double[] months) {
        double ripe = years < 6 ? years : years + RIPENESS * chance.nextGaussian();
        var time = GrowthTime.of(GrowthPace.of(site, sex), ripe, rates.value(Rate.SLOWING));
        boolean responds = chance.nextDouble() > rates.noResponse(cause);
        double lag = responds ? lag() : 0;
        double efficiency = responds
                ? Math.exp(rates.logEfficiency(site, cause)
                        + rates.logEfficiencySpread(site, cause) * chance.nextGaussian())
                : 0.12 + 0.14 * chance.nextGaussian();
        double wanders = responds ? efficiency * rates.value(Rate.WANDERING) : 0;
        double breaks = responds ? -Math.log(chance.nextDouble()) / rates.failuresAMonth(cause) : Double.MAX_VALUE;
        boolean broken = false;
        double left = 9 + 4 * chance.nextGaussian();
        double now = 0;
        var films = new ArrayList<Film>();
        for (double month : months) {
            while (now < month) {
                double next = Math.min(now + STEP, month);
                if (now >= breaks && !broken) {
                    broken = true;
                    wanders = 0;
                    efficiency = Hypotheses.FAILED_EFFICIENCY + Hypotheses.FAILED_SPREAD * chance.nextGaussian();
                }
                left -= efficiency * (time.at(Math.max(next, lag)) - time.at(Math.max(now, lag)));
                efficiency += wanders * Math.sqrt(next - now) * chance.nextGaussian();
                now = next;
            }
            double error = rates.filmError(site, cause)
                    * (chance.nextDouble() < rates.value(Rate.OUTLYING_FILMS) ? OUTLYING : 1);
            films.add(new Film(month, left + error * chance.nextGaussian()));
        }
        return films;
    }

    private double lag() {
        double draw = chance.nextDouble();
        return rates.value(Rate.LAG) * (draw < 0.3 ? LAGS[0] : draw < 0.75 ? LAGS[1] : LAGS[2]);
    }
}
