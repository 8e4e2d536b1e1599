package org.espalier.course;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.espalier.course.Course.FilmOfCourse;
import org.espalier.film.FilmId;
import org.espalier.reading.Change;
import org.espalier.reading.ReadNumber;
import org.espalier.reading.Reading;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;

/**
 * Brings films and readings on the time axis: of each film and limb the latest reading that stands, each value against
 * the one before it that was read in the same way. Standing and lying films are two ways.
 */
final class CoursePoints {

    private final Map<Quantity, Map<Side, List<CoursePoint>>> series = new EnumMap<>(Quantity.class);
    private final Map<FilmId, List<CoursePoint>> byFilm = new HashMap<>();

    CoursePoints(Course course) {
        course.films().stream()
                .filter(film -> film.day().isPresent())
                .sorted(Comparator.comparing(film -> film.day().orElseThrow()))
                .forEach(film -> List.of(Side.values()).forEach(side -> add(film, side)));
    }

    /** The values of a quantity of a limb, the earliest first. */
    List<CoursePoint> of(Side side, Quantity quantity) {
        return series.getOrDefault(quantity, Map.of()).getOrDefault(side, List.of());
    }

    /** The values on a film, right before left, in listing order. */
    List<CoursePoint> on(FilmId film) {
        return byFilm.getOrDefault(film, List.of());
    }

    /** The quantities of which there is a value of either limb, in listing order. */
    List<Quantity> quantities() {
        return List.copyOf(series.keySet());
    }

    private void add(FilmOfCourse film, Side side) {
        film.standing().stream()
                .filter(reading -> reading.limbs().contains(side))
                .findFirst()
                .ifPresent(reading -> reading.numbers().stream()
                        .filter(number -> number.side() == side)
                        .sorted(Comparator.comparing(ReadNumber::quantity))
                        .forEach(number -> add(film, reading, number)));
    }

    private void add(FilmOfCourse film, Reading reading, ReadNumber number) {
        var before = series.computeIfAbsent(number.quantity(), quantity -> new EnumMap<>(Side.class))
                .computeIfAbsent(number.side(), side -> new ArrayList<>());
        var point = new CoursePoint(
                number.side(),
                number.quantity(),
                film.day().orElseThrow(),
                film.film().id(),
                reading,
                number.value().orElseThrow(),
                number.doubtful(),
                since(reading, number, before));
        before.add(point);
        byFilm.computeIfAbsent(point.film(), id -> new ArrayList<>()).add(point);
    }

    private static Optional<CoursePoint.Since> since(Reading reading, ReadNumber number, List<CoursePoint> before) {
        var now = reading.taken();
        return before.reversed().stream()
                .flatMap(earlier -> Change.between(
                        number.side(),
                        number.quantity(),
                        earlier.value(),
                        earlier.reading().taken(),
                        number.value().orElseThrow(),
                        now)
                        .map(change -> new CoursePoint.Since(earlier.day(), change))
                        .stream())
                .findFirst();
    }
}
