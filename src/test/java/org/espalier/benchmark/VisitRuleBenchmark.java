package org.espalier.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.espalier.science.forecast.CentreLearning;
import org.espalier.science.forecast.CentreRates;
import org.espalier.science.forecast.LookRule;
import org.espalier.science.forecast.SimulatedCentre;
import org.espalier.science.forecast.TetherForecast;
import org.espalier.science.forecast.TetheredPhysis;

/**
 * What comes of limbs under three ways of setting the next look, with and without active recall of those who were not
 * brought. The limbs are simulated, the same ones for each way; {@code docs/method/visit-rule.md} has the table and
 * what is assumed.
 */
final class VisitRuleBenchmark {

    private static final int LIMBS = 1000;
    private static final double WAIT = 1;
    private static final double NOT_BROUGHT = 0.18;
    private static final double LOST = 0.08;
    private static final double LATE_MONTHS = 6;
    private static final double RECALLED_MONTHS = 1;
    private static final double LONGEST = 84;
    private static final double SOON = 0.6;
    private static final double LIST = 2.5;
    private static final double AIM = 0.4;
    private static final LookRule RULE = new LookRule(0.02, 6);
    private static final List<SimulatedCentre> CENTRES =
            List.of(SimulatedCentre.MIDDLING, SimulatedCentre.QUICK, SimulatedCentre.SLOW);

    /** How the next look is set. */
    private enum Way {
        EVERY_THREE_TO_FOUR_MONTHS,
        BY_FORECAST
    }

    /** What became of limbs, of a thousand. */
    private static final class Outcome {

        private int limbs;
        private int visits;
        private int beyondTwo;
        private int beyondFive;
        private int shortByTwo;
        private int unhelpedShort;

        void add(double left, int looks, boolean unhelped) {
            limbs++;
            visits += looks;
            beyondTwo += left < -2 ? 1 : 0;
            beyondFive += left < -5 ? 1 : 0;
            shortByTwo += left > 2 && !unhelped ? 1 : 0;
            unhelpedShort += left > 2 && unhelped ? 1 : 0;
        }

        double perThousand(int count) {
            return 1000.0 * count / limbs;
        }

        double looks() {
            return (double) visits / limbs;
        }

        double outside() {
            return perThousand(beyondTwo + shortByTwo);
        }
    }

    private final Way way;
    private final boolean recall;
    private final Outcome outcome = new Outcome();
    private int extraLooks;

    private VisitRuleBenchmark(Way way, boolean recall) {
        this.way = way;
        this.recall = recall;
    }

    public static void main(String[] arguments) {
        Outcome usual = outcome(Way.EVERY_THREE_TO_FOUR_MONTHS, false);
        Outcome usualRecalled = outcome(Way.EVERY_THREE_TO_FOUR_MONTHS, true);
        Outcome forecast = outcome(Way.BY_FORECAST, false);
        Outcome forecastRecalled = outcome(Way.BY_FORECAST, true);
        System.out.println(
                "| next look | recall | visits a limb | > 2° past | > 5° past | > 2° short | outside ±2° | short"
                        + " whatever the rule |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        say("every 3 to 4 months", "no", usual);
        say("every 3 to 4 months", "yes", usualRecalled);
        say("by forecast", "no", forecast);
        say("by forecast", "yes", forecastRecalled);
        boolean met = check("past 2°, no recall, at least 18 % lower", forecast.beyondTwo, usual.beyondTwo, 0.82)
                & check(
                        "past 2°, recall, at least 30 % lower",
                        forecastRecalled.beyondTwo, usualRecalled.beyondTwo, 0.70)
                & check("outside ±2°, no recall, at least 25 % lower", forecast.outside(), usual.outside(), 0.75)
                & check(
                        "outside ±2°, recall, at least 40 % lower",
                        forecastRecalled.outside(), usualRecalled.outside(), 0.60)
                & check(
                        "past 2°, recall against common practice, halved",
                        forecastRecalled.beyondTwo,
                        usual.beyondTwo,
                        0.5)
                & check(
                        "past 5°, recall against common practice, −70 %",
                        forecastRecalled.beyondFive, usual.beyondFive, 0.3)
                & check("visits, no recall, no more", forecast.looks(), usual.looks(), 1)
                & check("visits, recall, no more", forecastRecalled.looks(), usualRecalled.looks(), 1)
                & forecastRecalled.looks() <= usual.looks() + 0.4;
        System.exit(met ? 0 : 1);
    }

    private static boolean check(String what, double got, double against, double most) {
        double ratio = got / against;
        System.out.printf(Locale.ROOT, "%-55s %.2f %s%n", what, ratio, ratio <= most ? "met" : "NOT met");
        return ratio <= most;
    }

    private static void say(String rule, String recalled, Outcome of) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %.1f | %.0f | %.0f | %.0f | %.0f | %.0f |%n",
                rule,
                recalled,
                of.looks(),
                of.perThousand(of.beyondTwo),
                of.perThousand(of.beyondFive),
                of.perThousand(of.shortByTwo),
                of.outside(),
                of.perThousand(of.unhelpedShort));
    }

    private static Outcome outcome(Way way, boolean recall) {
        var run = new VisitRuleBenchmark(way, recall);
        for (SimulatedCentre centre : CENTRES) {
            CentreRates rates = CentreLearning.learn(past(centre));
            var families = new SplittableRandom(77);
            for (var limb : centre.limbs(LIMBS, 31)) {
                run.follow(limb, rates, families.split());
            }
        }
        return run.outcome;
    }

    private static List<TetheredPhysis> past(SimulatedCentre centre) {
        var past = new ArrayList<TetheredPhysis>();
        for (var limb : centre.limbs(120, 30)) {
            for (double month = 3.5; month < 25 && limb.left(month) > 0; month += 4) {
                limb.look(month);
            }
            past.add(limb.known());
        }
        return past;
    }

    private void follow(SimulatedCentre.Limb limb, CentreRates rates, SplittableRandom family) {
        double end = Math.clamp(limb.mature(), 6, LONGEST);
        double look = 3;
        int looks = 0;
        while (true) {
            double late = delay(family);
            double came = look + late;
            if (came >= end) {
                outcome.add(limb.left(end), looks, true);
                return;
            }
            looks++;
            limb.look(came);
            double next = way == Way.BY_FORECAST
                    ? nextByForecast(limb, rates, came, family)
                    : nextAsUsual(limb, family, came);
            if (next < 0) {
                double off = Math.min(end, -next);
                outcome.add(limb.left(off), looks + extraLooks, limb.failing(off));
                extraLooks = 0;
                return;
            }
            look = next;
        }
    }

    /** How much later than planned a child is brought; the longest time if never. */
    private double delay(SplittableRandom family) {
        double brought = family.nextDouble();
        double lost = family.nextDouble();
        double late = -Math.log(family.nextDouble());
        if (brought > NOT_BROUGHT) {
            return 0;
        }
        if (recall) {
            return lost < LOST / 4 ? LONGEST : RECALLED_MONTHS * late;
        }
        return lost < LOST ? LONGEST : LATE_MONTHS * late;
    }

    /** The next look, or the day of removal with a minus. */
    private double nextByForecast(SimulatedCentre.Limb limb, CentreRates rates, double now, SplittableRandom family) {
        TetherForecast forecast = TetherForecast.of(limb.known(), rates);
        double next = RULE.latest(look -> forecast.degreesLeft(look + WAIT).below(-2), now);
        return next - now >= LIST ? next : -listed(limb, rates, now, family);
    }

    /** The day in theatre of a limb that is listed: a look before may move it, a missed look leaves it. */
    private double listed(SimulatedCentre.Limb limb, CentreRates rates, double from, SplittableRandom family) {
        double now = from;
        double theatre = straight(TetherForecast.of(limb.known(), rates), now);
        while (theatre - WAIT - now > SOON && family.nextDouble() > NOT_BROUGHT) {
            now = theatre - WAIT;
            extraLooks++;
            limb.look(now);
            theatre = straight(TetherForecast.of(limb.known(), rates), now);
        }
        return theatre;
    }

    /** When it is expected to be straight, after the wait and within some months. */
    private static double straight(TetherForecast forecast, double now) {
        double month = now + WAIT;
        while (month < now + WAIT + LIST && forecast.degreesLeft(month).mean() > AIM) {
            month += 0.1;
        }
        return month;
    }

    /**
     * Common practice: off when the film is straight or the line through the last two films is before the next look.
     */
    private static double nextAsUsual(SimulatedCentre.Limb limb, SplittableRandom family, double now) {
        var films = limb.films();
        var last = films.getLast();
        var before = films.get(films.size() - 2);
        double rate = (before.degreesLeft() - last.degreesLeft()) / Math.max(1, last.months() - before.months());
        double interval = 3 + family.nextDouble();
        boolean off = last.degreesLeft() < 1 || last.degreesLeft() - rate * WAIT < 0;
        return off ? -(now + WAIT) : now + interval;
    }
}
