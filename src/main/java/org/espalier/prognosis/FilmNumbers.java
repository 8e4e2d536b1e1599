package org.espalier.prognosis;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.reading.Reading;
import org.espalier.reading.ScrewSeen;
import org.espalier.reading.Seen;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.forecast.PhysisSite;
import org.espalier.science.quantity.Side;

/**
 * What a child's films say, by the latest reading of each film and limb that stands: standing films, films from the
 * side even when the child lay, and numbers that a flexed knee does not put in doubt.
 */
public final class FilmNumbers {

    private final List<FilmAngle> all;
    private final List<BrokenScrew> broken;

    private FilmNumbers(List<FilmAngle> all, List<BrokenScrew> broken) {
        this.all = all;
        this.broken = broken;
    }

    private record BrokenScrew(LocalDate on, Side side, ScrewSeen.Plate plate) {}

    /** @param readings the newest first */
    static FilmNumbers of(List<Film> films, List<Reading> readings) {
        Map<FilmId, Film> byId = films.stream().collect(Collectors.toMap(Film::id, Function.identity()));
        var seen = new HashSet<List<Object>>();
        List<FilmAngle> angles = readings.stream()
                .filter(reading -> reading.counts()
                        && (!reading.taken().lay() || reading.taken().fromTheSide()))
                .flatMap(reading -> reading.numbers().stream()
                        .filter(number -> !number.doubtful())
                        .filter(number -> seen.add(List.of(reading.film(), number.side(), number.quantity())))
                        .flatMap(number -> day(byId, reading).stream()
                                .map(day -> new FilmAngle(
                                        day,
                                        number.side(),
                                        number.quantity(),
                                        number.value().orElseThrow()))))
                .sorted(Comparator.comparing(FilmAngle::on))
                .toList();
        List<BrokenScrew> broken = readings.stream()
                .filter(Reading::counts)
                .flatMap(reading -> reading.screws().stream()
                        .filter(screw -> screw.broken() == Seen.YES)
                        .flatMap(screw -> day(byId, reading).stream()
                                .map(day -> new BrokenScrew(day, screw.side(), screw.plate()))))
                .sorted(Comparator.comparing(BrokenScrew::on))
                .toList();
        return new FilmNumbers(angles, broken);
    }

    private static Optional<LocalDate> day(Map<FilmId, Film> films, Reading reading) {
        return Optional.ofNullable(films.get(reading.film())).flatMap(Film::takenOn);
    }

    /** One number over time, the earliest first. */
    public List<FilmAngle> of(Side side, Quantity quantity) {
        return all.stream()
                .filter(one -> one.side() == side && one.quantity() == quantity)
                .toList();
    }

    /** The latest one. */
    public Optional<FilmAngle> latest(Side side, Quantity quantity) {
        return of(side, quantity).stream().reduce((earlier, later) -> later);
    }

    /** The days of films on which a screw of the physis was seen broken, the earliest first. */
    public List<LocalDate> broken(Side side, PhysisSite site) {
        return broken.stream()
                .filter(one -> one.side == side && one.plate.name().equals(site.name()))
                .map(BrokenScrew::on)
                .toList();
    }
}
