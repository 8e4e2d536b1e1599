package org.espalier.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.espalier.interchange.PracticeCohort;
import org.espalier.science.forecast.CentreLearning;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.GoalTally;
import org.espalier.science.forecast.GoalTally.Measure;
import org.espalier.science.forecast.SimulatedCentre;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;

/**
 * How good forecasts are, beside lines and a fixed rate: at centres drawn otherwise than the forecast imagines them,
 * each with earlier limbs to learn from, and on the practice cohorts where they lie beside the project, as they are
 * and with noisier films. Means over centres. It fails if intervals do not hold at the drawn centres.
 */
final class GoalsBenchmark {

    private static final int CENTRES = 12;
    private static final int EARLIER = 250;
    private static final int ASKED = 400;
    private static final double LONGEST = 40;
    private static final double[] HORIZONS = {3, 6, 9, 12};
    private static final double[] FILM_ERRORS = {0.8, 1.0, 1.2};
    private static final double[] ADDED = {0, 0.7};
    private static final Path COHORTS = Path.of("../shared/evaluation/forecast");

    /** How many degrees a limb must still have left at the last film: with fewer its plate comes out. */
    private static final double STILL_BENT = 1;

    private GoalsBenchmark() {}

    public static void main(String[] arguments) throws IOException {
        boolean met = true;
        for (double error : FILM_ERRORS) {
            Mean mean = drawnCentres(error);
            mean.say("drawn centres, film error about " + error + " degrees");
            met &= mean.holds();
        }
        for (double added : ADDED) {
            practiceCohorts(added);
        }
        System.exit(met ? 0 : 1);
    }

    private static Mean drawnCentres(double filmError) {
        var mean = new Mean();
        var chance = new SplittableRandom(4);
        for (int i = 0; i < CENTRES; i++) {
            mean.add(goals(drawn(chance, filmError), i));
        }
        return mean;
    }

    /** A centre whose rates, spread, films, failures and intervals are drawn. */
    private static SimulatedCentre drawn(SplittableRandom chance, double filmError) {
        return new SimulatedCentre(
                "drawn",
                0.85 * Math.exp(0.2 * chance.nextGaussian()),
                0.35 + 0.15 * chance.nextDouble(),
                filmError * Math.exp(0.15 * chance.nextGaussian()),
                4 + chance.nextInt(5),
                2 + 2 * chance.nextDouble(),
                0.15 + 0.1 * chance.nextDouble(),
                0.5 + 1.5 * chance.nextDouble(),
                0.5 + 1.5 * chance.nextDouble(),
                3 + 2 * chance.nextDouble());
    }

    private static Map<Integer, GoalTally> goals(SimulatedCentre centre, int seed) {
        List<TetheredPhysis> past = followed(centre, EARLIER, 100 + seed).stream()
                .map(SimulatedCentre.Limb::known)
                .toList();
        CentreRates rates = CentreLearning.learn(past);
        var tallies = new TreeMap<Integer, GoalTally>();
        for (var limb : followed(centre, ASKED, 200 + seed)) {
            for (int films = 2; films <= Math.min(4, limb.films().size()); films++) {
                if (limb.films().get(films - 1).degreesLeft() >= STILL_BENT) {
                    judge(limb, films, rates, tallies.computeIfAbsent(films, _ -> new GoalTally()));
                }
            }
        }
        return tallies;
    }

    private static List<SimulatedCentre.Limb> followed(SimulatedCentre centre, int number, long seed) {
        List<SimulatedCentre.Limb> limbs = centre.limbs(number, seed);
        limbs.forEach(limb -> centre.follow(limb, LONGEST));
        return limbs;
    }

    private static void judge(SimulatedCentre.Limb limb, int films, CentreRates rates, GoalTally tally) {
        TetheredPhysis known = limb.known(films);
        TetherForecast forecast = TetherForecast.of(known, rates);
        for (double horizon : HORIZONS) {
            double months = known.lastFilm() + horizon;
            tally.film(known, forecast.film(months), months, limb.wouldRead(months));
        }
        tally.limb(forecast, limb.crossing(), limb.failing(known.lastFilm()));
    }

    private static void practiceCohorts(double added) throws IOException {
        if (!Files.isDirectory(COHORTS)) {
            System.out.println("practice cohorts left out: " + COHORTS + " is not there");
            return;
        }
        var mean = new Mean();
        for (String name : List.of("practice-1", "practice-2")) {
            Path folder = COHORTS.resolve(name);
            mean.add((added == 0
                            ? PracticeCohort.in(folder)
                            : PracticeCohort.noisier(folder, added, Files.createTempDirectory(name)))
                    .goals());
        }
        mean.say("practice cohorts, " + (added == 0 ? "as they are" : "films noisier by " + added + " degrees"));
    }

    /** Means of the measures over centres, by films and measure. */
    private static final class Mean {

        private final Map<Integer, Map<Measure, Double>> sums = new TreeMap<>();
        private int centres;

        void add(Map<Integer, GoalTally> tallies) {
            centres++;
            tallies.forEach((films, tally) -> {
                Map<Measure, Double> sum = sums.computeIfAbsent(films, _ -> new EnumMap<>(Measure.class));
                for (Measure measure : Measure.values()) {
                    sum.merge(measure, tally.value(measure), Double::sum);
                }
            });
        }

        private DoubleStream values(Measure measure) {
            return sums.values().stream().mapToDouble(sum -> sum.getOrDefault(measure, 0.0) / centres);
        }

        boolean holds() {
            return within(Measure.WITHIN_90, 0.86, 0.94)
                    && within(Measure.WITHIN_50, 0.44, 0.56)
                    && within(Measure.MEAN_PLACE, 0.44, 0.56)
                    && within(Measure.DATE_WITHIN_90, 0.88, 0.97);
        }

        private boolean within(Measure measure, double least, double most) {
            return values(measure).allMatch(value -> value >= least && value <= most);
        }

        void say(String which) {
            System.out.printf("%n%s: means over %d, after 2, 3, 4 films%n", which, centres);
            for (Measure measure : Measure.values()) {
                String figures = values(measure)
                        .mapToObj(value -> String.format(Locale.ROOT, "%8.3f", value))
                        .collect(Collectors.joining());
                System.out.printf("  %-50s %s%n", measure.text(), figures);
            }
        }
    }
}
