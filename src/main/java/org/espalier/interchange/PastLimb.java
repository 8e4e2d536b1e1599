package org.espalier.interchange;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.espalier.science.forecast.Cause;
import org.espalier.science.forecast.Deformity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.forecast.TetheredPhysis;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.Sex;

/** One limb of a folder of past courses: the plate, its child, its films and what happened to it. */
final class PastLimb {

    private static final Angle NEUTRAL = Angle.ofDegrees(87);
    private static final double DAYS_IN_A_MONTH = 30.4375;
    private static final double MONTHS_IN_A_YEAR = 12;

    record Child(String id, Sex sex, LocalDate birth, Cause cause) {}

    record Film(LocalDate day, Angle joint) {}

    private final Child child;
    private final LocalDate plate;
    private final PhysisSite site;
    private final Deformity deformity;
    private final OptionalDouble boneAge;
    private final List<Film> films = new ArrayList<>();
    private Optional<LocalDate> broken = Optional.empty();

    PastLimb(Child child, LocalDate plate, PhysisSite site, Deformity deformity, OptionalDouble boneAge) {
        this.child = child;
        this.plate = plate;
        this.site = site;
        this.deformity = deformity;
        this.boneAge = boneAge;
    }

    Child child() {
        return child;
    }

    PhysisSite site() {
        return site;
    }

    /** Adds a film of the time before the plate or with it in. */
    void add(Film film) {
        films.add(film);
        films.sort(Comparator.comparing(Film::day));
    }

    /** Keeps when a broken screw was first seen. */
    void sawBroken(LocalDate day) {
        if (broken.isEmpty() || day.isBefore(broken.orElseThrow())) {
            broken = Optional.of(day);
        }
    }

    List<Film> films() {
        return films;
    }

    /** Months since the plate, 30.4375 days each. */
    double months(LocalDate day) {
        return ChronoUnit.DAYS.between(plate, day) / DAYS_IN_A_MONTH;
    }

    /** The limb as it was known after its first films. */
    TetheredPhysis afterFilms(int number) {
        return known(films.subList(0, number), films.get(number - 1).day());
    }

    /** The limb as it was known on a day. */
    TetheredPhysis on(LocalDate day) {
        return known(films.stream().filter(film -> !film.day().isAfter(day)).toList(), day);
    }

    private TetheredPhysis known(List<Film> seen, LocalDate day) {
        return new TetheredPhysis(
                site,
                child.cause(),
                child.sex(),
                Math.max(0, ChronoUnit.DAYS.between(child.birth(), plate) / DAYS_IN_A_MONTH / MONTHS_IN_A_YEAR),
                boneAge,
                seen.stream()
                        .map(film -> new TetheredPhysis.Film(
                                months(film.day()), deformity.degreesLeft(site, film.joint(), NEUTRAL)))
                        .toList(),
                broken.filter(on -> !on.isAfter(day)).stream()
                        .mapToDouble(this::months)
                        .findFirst());
    }
}
