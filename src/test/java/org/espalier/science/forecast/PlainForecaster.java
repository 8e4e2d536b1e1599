package org.espalier.science.forecast;

import java.util.List;
import org.espalier.science.forecast.TetheredPhysis.Film;

/**
 * Forecasts that anybody could make with a ruler, to be beaten. Films before the plate count as of its day; a film errs
 * by 0.89 degrees. On both practice cohorts they score as printed beside them, to 0.5 %.
 */
public enum PlainForecaster {
    /** A straight line through the last two films. */
    LAST_TWO {
        @Override
        public Spread film(TetheredPhysis known, double months) {
            List<Film> films = known.films();
            return line(films.subList(films.size() - 2, films.size()), months);
        }
    },
    /** A straight line of least squares through all films. */
    ALL {
        @Override
        public Spread film(TetheredPhysis known, double months) {
            return line(known.films(), months);
        }
    },
    /** From the last film on at a rate as published, 0.84 degrees a month at the femur and 0.80 at the tibia. */
    FIXED_RATE {
        @Override
        public Spread film(TetheredPhysis known, double months) {
            double ahead = months - known.lastFilm();
            double rate = known.site() == PhysisSite.DISTAL_FEMUR ? 0.84 : 0.80;
            return Spread.ofNormal(
                    known.films().getLast().degreesLeft() - rate * ahead,
                    Math.sqrt(2 * FILM_ERROR * FILM_ERROR + RATE_SPREAD * RATE_SPREAD * ahead * ahead));
        }
    };

    private static final double FILM_ERROR = 0.89;
    private static final double RATE_SPREAD = 0.345;

    /** How it expects a film to read so many months after the plate, from two films or more. */
    public abstract Spread film(TetheredPhysis known, double months);

    private static Spread line(List<Film> films, double months) {
        double n = films.size();
        double middle = films.stream().mapToDouble(PlainForecaster::time).sum() / n;
        double height = films.stream().mapToDouble(Film::degreesLeft).sum() / n;
        double squares = 0;
        double products = 0;
        for (Film film : films) {
            double away = time(film) - middle;
            squares += away * away;
            products += away * (film.degreesLeft() - height);
        }
        double ahead = months - middle;
        return Spread.ofNormal(
                height + products / squares * ahead, FILM_ERROR * Math.sqrt(1 + 1 / n + ahead * ahead / squares));
    }

    private static double time(Film film) {
        return Math.max(0, film.months());
    }
}
