package org.espalier.science.forecast;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.espalier.science.forecast.TetheredPhysis.Film;
import org.espalier.science.quantity.Sex;

/**
 * A centre whose limbs are drawn, on purpose not as the forecast imagines them: growth in millimetres over the width of
 * the growth plate, efficiency by a gamma distribution shared by a child's limbs, a plate that bites little by little,
 * a rate that sways about its mean, heavy-tailed films, hardware that tires, limbs that respond a little.
 *
 * @param name for the reader
 * @param efficiency mean part of the full tether
 * @param variation coefficient of variation of the efficiency
 * @param filmError standard deviation of a film, in degrees
 * @param tails degrees of freedom of a film's error, above 2
 * @param bitesBy months until the plate bites wholly, at most
 * @param sway standard deviation of the logarithm of the rate about its mean
 * @param noResponse factor on the share without response
 * @param breaks factor on the failures of hardware
 * @param interval usual months between films
 */
public record SimulatedCentre(
        String name,
        double efficiency,
        double variation,
        double filmError,
        int tails,
        double bitesBy,
        double sway,
        double noResponse,
        double breaks,
        double interval) {

    /** A middling centre. */
    public static final SimulatedCentre MIDDLING =
            new SimulatedCentre("middling", 0.85, 0.40, 1.0, 5, 3, 0.20, 1, 1, 4);

    /** Quick, with good films. */
    public static final SimulatedCentre QUICK = new SimulatedCentre("quick", 1.10, 0.35, 0.7, 8, 2, 0.15, 0.5, 0.5, 3);

    /** Slow, with poor films. */
    public static final SimulatedCentre SLOW = new SimulatedCentre("slow", 0.65, 0.50, 1.5, 4, 4, 0.25, 1.5, 1, 5);

    /** Many plates that fail. */
    public static final SimulatedCentre FAILING = new SimulatedCentre("failing", 0.85, 0.45, 1.1, 4, 2.5, 0.2, 2, 2, 4);

    private static final double MONTHS = 12;
    private static final int LONGEST = 240;

    /**
     * Millimetres a year in the year after each birthday from 1, derived from the 1964 lengths (J Bone Joint Surg Am
     * 46-A:1197).
     */
    private static final double[][] GROWTH = {
        {24, 22, 19, 17, 16, 15, 15, 14, 14, 15, 14, 11, 5.9, 2.3, 0.8, 0.1, 0, 0, 0},
        {17, 13, 12, 11, 10, 9.6, 9.5, 9.5, 9.8, 9.8, 9.2, 7.0, 3.4, 0.9, 0.2, 0.1, 0, 0, 0},
        {26, 21, 18, 16, 15, 15, 14, 15, 14, 13, 14, 15, 14, 11, 7, 3, 0.8, 0.2, 0},
        {17, 13, 11, 10, 9.5, 9.3, 9.2, 9.2, 8.8, 8.9, 9.4, 9.9, 9.6, 6.8, 3.8, 1.0, 0.3, 0.1, 0}
    };

    /** Shares without response and yearly failures by cause, invented within what series report. */
    private static final double[] NO_RESPONSE = {0.03, 0.07, 0.15, 0.28, 0.07, 0.07};

    private static final double[] FAILURES = {0.01, 0.01, 0.12, 0.15, 0.02, 0.03};
    private static final double[] CAUSE_FACTOR = {1, 0.85, 1.3, 1.0, 0.6, 0.8};

    /** One limb as it would go with its plate kept in. */
    public static final class Limb {

        private final TetheredPhysis known;
        private final double[] left;
        private final boolean responds;
        private final double breaksAt;
        private final double filmError;
        private final int tails;
        private final SplittableRandom chance;
        private final List<Film> films = new ArrayList<>();

        private Limb(
                TetheredPhysis known,
                double[] left,
                boolean responds,
                double breaksAt,
                SimulatedCentre centre,
                SplittableRandom chance) {
            this.known = known;
            this.left = left;
            this.responds = responds;
            this.breaksAt = breaksAt;
            filmError = centre.filmError;
            tails = centre.tails;
            this.chance = chance;
            look(-chance.nextDouble());
        }

        /** The true degrees left. */
        public double left(double months) {
            double at = Math.clamp(months, 0, LONGEST - 1.001);
            int whole = (int) at;
            return left[whole] + (at - whole) * (left[whole + 1] - left[whole]);
        }

        /** Takes a film. */
        public Film look(double months) {
            var film = new Film(months, wouldRead(months));
            films.add(film);
            return film;
        }

        /** How a film would read that is not taken, another each time. */
        public double wouldRead(double months) {
            double chi = 0;
            for (int i = 0; i < tails; i++) {
                double z = chance.nextGaussian();
                chi += z * z;
            }
            double scale = Math.sqrt((tails - 2) / chi);
            return left(months) + filmError * scale * chance.nextGaussian();
        }

        /** The films until now. */
        public List<Film> films() {
            return films;
        }

        /** What a clinic knows after its first films. */
        public TetheredPhysis known(int number) {
            return new TetheredPhysis(
                    known.site(),
                    known.cause(),
                    known.sex(),
                    known.yearsAtPlate(),
                    known.boneAgeAtPlate(),
                    films.subList(0, number),
                    OptionalDouble.empty());
        }

        /** What a clinic knows by all films. */
        public TetheredPhysis known() {
            return known(films.size());
        }

        /** Whether it moves no more, for whatever reason of its own. */
        public boolean failing(double months) {
            return !responds || breaksAt < months;
        }

        /** Months after the plate at which it is truly straight; empty if it never is. */
        public OptionalDouble crossing() {
            int month = 0;
            while (month < LONGEST - 1 && left[month + 1] > 0) {
                month++;
            }
            return month < LONGEST - 1
                    ? OptionalDouble.of(month + left[month] / (left[month] - left[month + 1]))
                    : OptionalDouble.empty();
        }

        /** Months after the plate by which growth has ended. */
        public double mature() {
            return MONTHS * (known.sex() == Sex.FEMALE ? 15.5 : 17.5) - MONTHS * known.yearsAtPlate();
        }
    }

    /** Draws limbs, two to a child; always the same for the same seed. */
    public List<Limb> limbs(int number, long seed) {
        var chance = new SplittableRandom(seed);
        var limbs = new ArrayList<Limb>();
        while (limbs.size() < number) {
            addChild(limbs, chance);
        }
        return limbs;
    }

    private void addChild(List<Limb> limbs, SplittableRandom chance) {
        double draw = chance.nextDouble();
        Cause cause = draw < 0.48
                ? Cause.IDIOPATHIC_VALGUS
                : draw < 0.60
                        ? Cause.IDIOPATHIC_VARUS
                        : draw < 0.68
                                ? Cause.INFANTILE_TIBIA_VARA
                                : draw < 0.78
                                        ? Cause.LATE_ONSET_TIBIA_VARA
                                        : draw < 0.90 ? Cause.SKELETAL_DYSPLASIA : Cause.RICKETS;
        boolean tibia = cause == Cause.INFANTILE_TIBIA_VARA
                || cause == Cause.LATE_ONSET_TIBIA_VARA
                || (cause.ordinal() > Cause.LATE_ONSET_TIBIA_VARA.ordinal() && chance.nextBoolean());
        Sex sex = chance.nextBoolean() ? Sex.FEMALE : Sex.MALE;
        double years = age(cause, sex, chance);
        double ahead = 0.9 * chance.nextGaussian();
        double shared = gamma(0.5 / (variation * variation), chance);
        OptionalDouble boneAge = years > 8 && chance.nextBoolean()
                ? OptionalDouble.of(Math.max(1, years + ahead + 0.5 * chance.nextGaussian()))
                : OptionalDouble.empty();
        var known = new TetheredPhysis(
                tibia ? PhysisSite.PROXIMAL_TIBIA : PhysisSite.DISTAL_FEMUR,
                cause,
                sex,
                years,
                boneAge,
                List.of(),
                OptionalDouble.empty());
        for (int side = 0; side < 2; side++) {
            limbs.add(limb(known, ahead, shared, chance.split()));
        }
    }

    private static double age(Cause cause, Sex sex, SplittableRandom chance) {
        double boys = sex == Sex.MALE ? 1.5 : 0;
        return switch (cause) {
            case IDIOPATHIC_VALGUS, IDIOPATHIC_VARUS -> 10 + boys + 2.5 * chance.nextDouble();
            case INFANTILE_TIBIA_VARA -> 2.5 + 2 * chance.nextDouble();
            case LATE_ONSET_TIBIA_VARA -> 10.5 + boys / 2 + 2 * chance.nextDouble();
            case SKELETAL_DYSPLASIA, RICKETS -> 4 + 7 * chance.nextDouble();
        };
    }

    private Limb limb(TetheredPhysis known, double ahead, double shared, SplittableRandom chance) {
        int cause = known.cause().ordinal();
        double own = (shared + gamma(0.5 / (variation * variation), chance)) * variation * variation;
        boolean responds = chance.nextDouble() > Math.min(0.6, noResponse * NO_RESPONSE[cause]);
        double strength = efficiency * CAUSE_FACTOR[cause] * own * (responds ? 1 : 0.15 * chance.nextDouble());
        double tired = 2 * Math.sqrt(-Math.log(chance.nextDouble())) / Math.sqrt(breaks * FAILURES[cause]);
        double bites = 1 + (bitesBy - 1) * chance.nextDouble();
        double mood = sway * chance.nextGaussian();
        var left = new double[LONGEST];
        left[0] = 5 + 7 * chance.nextDouble() + (cause == 2 || cause == 3 ? 3 : 0);
        for (int month = 0; month < LONGEST - 1; month++) {
            double age = known.yearsAtPlate() + ahead + (month + 0.5) / MONTHS;
            double bitten = Math.min(1, (month + 0.5) / bites);
            boolean broken = month > MONTHS * tired;
            double rate = broken ? -0.03 : strength * bitten * Math.exp(mood) * fullTether(known, age);
            left[month + 1] = left[month] - rate;
            mood = 0.85 * mood + Math.sqrt(1 - 0.85 * 0.85) * sway * chance.nextGaussian();
        }
        return new Limb(known, left, responds, MONTHS * tired, this, chance.split());
    }

    /** Degrees a month if one side stood still: growth over width. */
    private static double fullTether(TetheredPhysis known, double age) {
        boolean tibia = known.site() == PhysisSite.PROXIMAL_TIBIA;
        double[] growth = GROWTH[(known.sex() == Sex.MALE ? 2 : 0) + (tibia ? 1 : 0)];
        double at = Math.clamp(age - 1.5, 0, growth.length - 1.001);
        int whole = (int) at;
        double millimetres = growth[whole] + (at - whole) * (growth[whole + 1] - growth[whole]);
        double width = Math.min(78, 36 + 3 * age) * (tibia ? 0.92 : 1);
        return Math.toDegrees(Math.atan(millimetres / width)) / MONTHS;
    }

    /** A gamma variable of unit scale (Marsaglia and Tsang, ACM Trans Math Softw 2000;26:363). */
    private static double gamma(double shape, SplittableRandom chance) {
        double d = shape - 1.0 / 3;
        if (shape < 1) {
            return gamma(shape + 1, chance) * Math.pow(chance.nextDouble(), 1 / shape);
        }
        while (true) {
            double x = chance.nextGaussian();
            double v = Math.pow(1 + x / Math.sqrt(9 * d), 3);
            if (v > 0 && Math.log(chance.nextDouble()) < 0.5 * x * x + d - d * v + d * Math.log(v)) {
                return d * v;
            }
        }
    }

    /**
     * Takes films as clinics do: the first after three to four months, some visits missed, until straight or so many
     * months.
     */
    public void follow(Limb limb, double longest) {
        double month = 3 + 1.5 * limb.chance.nextDouble();
        while (month < longest) {
            if (limb.chance.nextDouble() > 0.12) {
                double read = limb.look(month).degreesLeft();
                if (read < 0.5) {
                    return;
                }
            }
            month += interval * (0.8 + 0.4 * limb.chance.nextDouble());
        }
    }
}
