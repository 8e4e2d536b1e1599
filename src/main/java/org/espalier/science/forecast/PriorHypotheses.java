package org.espalier.science.forecast;

import org.espalier.science.forecast.Hypotheses.Kind;
import org.espalier.science.forecast.TetheredPhysis.Film;

/**
 * The ways one growth plate may go before its films are seen, and after.
 *
 * <p>Spread by quadrature: five efficiencies (log-normal), three lags, three skeletal ages; failure at one of five
 * times.
 */
final class PriorHypotheses {

    /** Degrees left before any film: what series start from, judged. */
    private static final Hypotheses.Start UNSEEN = new Hypotheses.Start(9, 5);

    /** Where five-point quadrature over a normal distribution looks, in standard deviations. */
    private static final double[] FIVE = {-2.856970, -1.355626, 0, 1.355626, 2.856970};

    private static final double[] FIVE_WEIGHTS = {0.011257, 0.222076, 0.533333, 0.222076, 0.011257};

    private static final double[] THREE = {-1.732051, 0, 1.732051};
    private static final double[] THREE_WEIGHTS = {1.0 / 6, 2.0 / 3, 1.0 / 6};

    /** Share of the log-normal's spread that lies between the five; the rest is each one's own normal spread. */
    private static final double BETWEEN = 0.8;

    private static final double WITHIN = 0.6;

    private static final double[] LAGS = {0.2, 1, 2.5};
    private static final double[] LAG_WEIGHTS = {0.3, 0.45, 0.25};

    /** Efficiency of a plate without response, judged. */
    private static final double NO_RESPONSE = 0.12;

    private static final double NO_RESPONSE_SPREAD = 0.14;

    /** How far skeletal age lies from that in years, and from a bone age that was read; years, judged. */
    private static final double RIPENESS = 0.9;

    private static final double BONE_AGE_ERROR = 0.5;

    /** Under this age ripeness changes rates too little to matter. */
    private static final double YOUNG = 7;

    private static final int FAILURES = 5;

    /** Ways lighter than this are given up between films. */
    private static final double HOPELESS = 1e-8;

    private final TetheredPhysis physis;
    private final CentreRates rates;
    private final Hypotheses all;
    private final double until;
    private final double failuresAMonth;
    private final double[] efficiencies = new double[FIVE.length];
    private final double spread;

    private PriorHypotheses(TetheredPhysis physis, CentreRates rates) {
        this.physis = physis;
        this.rates = rates;
        double from = physis.films().isEmpty()
                ? 0
                : Math.min(0, physis.films().getFirst().months());
        until = physis.lastFilm();
        failuresAMonth = rates.failuresAMonth(physis.cause());
        spread = rates.logEfficiencySpread(physis.site(), physis.cause());
        double centre = rates.logEfficiency(physis.site(), physis.cause());
        for (int i = 0; i < FIVE.length; i++) {
            efficiencies[i] = Math.exp(centre + BETWEEN * spread * FIVE[i]);
        }
        all = new Hypotheses(
                from,
                rates.filmError(physis.site(), physis.cause()),
                rates.value(Rate.OUTLYING_FILMS),
                5 * (9 + FAILURES) + 1);
    }

    /** All ways, weighed by the films of the growth plate. */
    static Hypotheses afterFilms(TetheredPhysis physis, CentreRates rates) {
        var prior = new PriorHypotheses(physis, rates);
        prior.addAll();
        for (Film film : physis.films()) {
            prior.all.observe(film.months(), film.degreesLeft());
            prior.all.prune(HOPELESS);
        }
        if (prior.all.now() < 0) {
            prior.all.advance(0);
        }
        prior.weighNoticing();
        return prior.all;
    }

    private void addAll() {
        double years = physis.boneAgeAtPlate().orElse(physis.yearsAtPlate());
        double unsure = physis.boneAgeAtPlate().isPresent() ? BONE_AGE_ERROR : RIPENESS;
        var pace = GrowthPace.of(physis.site(), physis.sex());
        double slowing = rates.value(Rate.SLOWING);
        var typical = GrowthTime.of(pace, years, slowing);
        double responds = 1 - rates.noResponse(physis.cause());
        if (physis.seenBroken().isEmpty()) {
            double intact = responds * Math.exp(-failuresAMonth * until);
            boolean young = years + until / 12 < YOUNG;
            for (int age = 0; age < THREE.length; age++) {
                if (age == 1) {
                    addIntact(typical, young ? intact : intact * THREE_WEIGHTS[1]);
                } else if (!young) {
                    addIntact(
                            GrowthTime.of(pace, Math.max(0, years + THREE[age] * unsure), slowing),
                            intact * THREE_WEIGHTS[age]);
                }
            }
        }
        addNoResponse(typical);
        addFailed(typical, responds);
    }

    private void addNoResponse(TetherTime typical) {
        all.add(
                Kind.NO_RESPONSE,
                rates.noResponse(physis.cause()),
                typical,
                0,
                Hypotheses.NOT_FAILED,
                UNSEEN,
                NO_RESPONSE,
                NO_RESPONSE_SPREAD,
                0);
    }

    private void addIntact(TetherTime time, double weight) {
        for (int i = 0; i < LAGS.length; i++) {
            addResponding(
                    Kind.RESPONDS,
                    weight * LAG_WEIGHTS[i],
                    time,
                    LAGS[i] * rates.value(Rate.LAG),
                    Hypotheses.NOT_FAILED);
        }
    }

    private void addFailed(TetherTime time, double responds) {
        double latest = Math.min(until, physis.seenBroken().orElse(until));
        double slice = latest / FAILURES;
        for (int i = 0; i < FAILURES && slice > 0; i++) {
            double weight = Math.exp(-failuresAMonth * i * slice) * -Math.expm1(-failuresAMonth * slice);
            addResponding(Kind.FAILED, responds * weight, time, rates.value(Rate.LAG), (i + 0.5) * slice);
        }
    }

    private void addResponding(Kind kind, double weight, TetherTime time, double lag, double failsAt) {
        for (int i = 0; i < FIVE.length; i++) {
            double efficiency = efficiencies[i];
            all.add(
                    kind,
                    weight * FIVE_WEIGHTS[i],
                    time,
                    lag,
                    failsAt,
                    UNSEEN,
                    efficiency,
                    efficiency * WITHIN * spread,
                    efficiency * rates.value(Rate.WANDERING));
        }
    }

    /** A broken screw is noticed on each film by chance: films on which none was seen speak against one. */
    private void weighNoticing() {
        double noticed = rates.value(Rate.NOTICED);
        double seen = physis.seenBroken().orElse(Double.POSITIVE_INFINITY);
        for (int i = 0; i < all.count(); i++) {
            double like = Double.isFinite(seen) && all.kind[i] == Kind.FAILED ? noticed : 1;
            for (Film film : physis.films()) {
                if (film.months() > all.failsAt[i] && film.months() < seen) {
                    like *= 1 - noticed;
                }
            }
            all.weigh(i, like);
        }
    }
}
