package org.espalier.outcomes;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.KeptForecasts;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.quantity.Angle;
import org.espalier.treatment.PhysisKey;
import org.espalier.treatment.Target;
import org.espalier.treatment.Tether;

/**
 * What the films say of one growth plate that is held, as degrees past the target that stood on the day: + beyond it, −
 * still deformed.
 */
record PlateAngles(
        PhysisKey physis,
        PhysisSite site,
        Deformity corrects,
        LocalDate from,
        LocalDate today,
        List<FilmAngle> films,
        List<Target> targets) {

    private static final int MONTHS_A_FILM_TELLS = 6;
    private static final int EARLIEST_MONTH = 18;
    private static final int MIDDLE_MONTH = 24;
    private static final int LATEST_MONTH = 30;

    /** How far it went back by two years after it was let go. */
    record Drift(After after, OptionalDouble degrees) {

        static final Drift NOT_DUE = new Drift(After.NOT_DUE, OptionalDouble.empty());
    }

    /** Empty for one that is held in no frontal plane of the knee. */
    static Optional<PlateAngles> of(KeptForecasts facts, Tether tether) {
        var physis = tether.physis();
        return KeptForecasts.site(physis).flatMap(site -> firstSide(tether)
                .map(corrects -> new PlateAngles(
                        physis,
                        site,
                        corrects,
                        tether.from(),
                        facts.treatment().today(),
                        facts.films(physis),
                        facts.treatment().targets().facts())));
    }

    /** By the side of the bone on which it was placed. */
    private static Optional<Deformity> firstSide(Tether tether) {
        return tether.periods().getFirst().side().flatMap(KeptForecasts::corrects);
    }

    /** By the last film of the half year before the day on which it was let go, that day included. */
    Optional<Double> pastBefore(LocalDate end) {
        var earliest = end.minusMonths(MONTHS_A_FILM_TELLS);
        return films.stream()
                .filter(film -> !film.on().isBefore(earliest)
                        && !film.on().isBefore(from)
                        && !film.on().isAfter(end))
                .reduce((earlier, later) -> later)
                .map(this::past);
    }

    /** The day of the first film after the plate within the band of the target or past it. */
    Optional<LocalDate> reached(LocalDate to) {
        return films.stream()
                .filter(film -> film.on().isAfter(from) && !film.on().isAfter(to))
                .filter(film -> past(film) >= -Came.BAND_DEGREES)
                .map(FilmAngle::on)
                .findFirst();
    }

    /** @param held the days from which something held it */
    Drift drift(Optional<TetherEnd> released, List<LocalDate> held) {
        var end = released.map(TetherEnd::on);
        var before = end.flatMap(this::pastBefore);
        if (end.isEmpty() || before.isEmpty()) {
            return Drift.NOT_DUE;
        }
        var latest = end.get().plusMonths(LATEST_MONTH);
        var again = held.stream()
                .filter(day -> day.isAfter(end.get()) && !day.isAfter(latest))
                .min(Comparator.naturalOrder());
        var film = twoYearsAfter(end.get(), again.orElse(latest.plusDays(1)));
        if (film.isPresent()) {
            return new Drift(After.FILMED, OptionalDouble.of(before.get() - past(film.get(), end.get())));
        }
        if (again.isPresent()) {
            return new Drift(After.HELD_AGAIN, OptionalDouble.empty());
        }
        return today.isBefore(latest) ? Drift.NOT_DUE : new Drift(After.NOT_FILMED, OptionalDouble.empty());
    }

    /** The film nearest two years after the day, before another. */
    private Optional<FilmAngle> twoYearsAfter(LocalDate end, LocalDate before) {
        var middle = end.plusMonths(MIDDLE_MONTH);
        return films.stream()
                .filter(film -> !film.on().isBefore(end.plusMonths(EARLIEST_MONTH))
                        && !film.on().isAfter(end.plusMonths(LATEST_MONTH))
                        && film.on().isBefore(before))
                .min(Comparator.comparingLong(film -> Math.abs(ChronoUnit.DAYS.between(middle, film.on()))));
    }

    private double past(FilmAngle film) {
        return past(film, film.on());
    }

    /** By the target of a day: what is aimed at may change while it is held, and means nothing once it is let go. */
    private double past(FilmAngle film, LocalDate day) {
        return -corrects.degreesLeft(site, new Angle(film.value()), target(day));
    }

    private Angle target(LocalDate day) {
        return targets.stream()
                .filter(target -> target.side() == physis.side()
                        && target.bone() == physis.bone()
                        && target.end() == physis.end())
                .filter(target -> !target.on().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(Target::angle)
                .orElseGet(() -> Target.byDefault(physis));
    }
}
