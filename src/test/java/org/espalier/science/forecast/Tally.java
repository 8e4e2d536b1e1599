package org.espalier.science.forecast;

import java.util.Locale;

/** What was forecast and what came, beside a line through the last two films. */
final class Tally {

    private int forecasts;
    private int within90;
    private int within50;
    private double places;
    private double score;
    private double line;

    void add(Spread spread, double came, double lineScore) {
        double place = spread.below(came);
        forecasts++;
        within90 += place > 0.05 && place < 0.95 ? 1 : 0;
        within50 += place > 0.25 && place < 0.75 ? 1 : 0;
        places += place;
        score += spread.rankedScore(came);
        line += lineScore;
    }

    double within90() {
        return (double) within90 / forecasts;
    }

    double within50() {
        return (double) within50 / forecasts;
    }

    double meanPlace() {
        return places / forecasts;
    }

    /** The ranked score as a part of the line's. */
    double ofTheLine() {
        return score / line;
    }

    /** A line through the last two films, errors of 1 degree. */
    static Spread line(TetheredPhysis known, double months) {
        var last = known.films().getLast();
        var before = known.films().get(known.films().size() - 2);
        double apart = last.months() - before.months();
        double part = (months - last.months()) / apart;
        double mean = last.degreesLeft() + part * (last.degreesLeft() - before.degreesLeft());
        return Spread.ofNormal(mean, Math.sqrt((1 + part) * (1 + part) + part * part + 1));
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%5d forecasts: 90 %% covers %.3f, 50 %% %.3f, mean place %.3f, score %.3f, of the line %.3f",
                forecasts,
                within90(),
                within50(),
                meanPlace(),
                score / forecasts,
                ofTheLine());
    }
}
