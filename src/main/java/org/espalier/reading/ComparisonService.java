package org.espalier.reading;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.access.SiteService;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.FilmState;
import org.espalier.patient.ChildId;
import org.espalier.patient.PatientService;
import org.espalier.reading.Comparison.Compared;
import org.espalier.reading.Comparison.LimbRead;
import org.espalier.reading.Comparison.Placed;
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Lays two films of one child side by side. */
@Service
@Transactional
public class ComparisonService {

    private final FilmService films;
    private final PatientService patients;
    private final JdbcReadingRepository readings;
    private final SiteService sites;

    ComparisonService(FilmService films, PatientService patients, JdbcReadingRepository readings, SiteService sites) {
        this.films = films;
        this.patients = patients;
        this.readings = readings;
        this.sites = sites;
    }

    /** Both films; empty unless the caller may see both, both can be shown, and both are of one child. */
    public Optional<Comparison> open(FilmId one, FilmId other) {
        if (one.equals(other)) {
            return Optional.empty();
        }
        var shown = Stream.of(one, other)
                .flatMap(id -> films.find(id).stream())
                .filter(film -> film.state() == FilmState.READY)
                .toList();
        return child(shown)
                .flatMap(child -> patients.open(child, "comparison"))
                .map(child -> Comparison.of(
                        child,
                        sites.today(child.site()),
                        films.of(child.id()).stream()
                                .filter(film -> film.state() == FilmState.READY)
                                .toList(),
                        compared(shown.getFirst()),
                        compared(shown.getLast())));
    }

    private static Optional<ChildId> child(List<Film> shown) {
        var children = shown.stream().map(Film::child).distinct().toList();
        return shown.size() == 2 && children.size() == 1 ? children.getFirst() : Optional.empty();
    }

    private Compared compared(Film film) {
        var standing = readings.ofFilm(film.site(), film.id()).stream()
                .filter(Reading::counts)
                .toList();
        var limbs = Stream.of(Side.values())
                .flatMap(side -> standing.stream()
                        .filter(reading -> reading.limbs().contains(side))
                        .findFirst()
                        .map(reading -> limb(side, reading, film))
                        .stream())
                .toList();
        var age = film.child().flatMap(child -> film.takenOn().flatMap(day -> patients.ageOn(child, day)));
        return new Compared(film, age, limbs);
    }

    private LimbRead limb(Side side, Reading reading, Film film) {
        var measured = FilmMeasurement.of(readings.marks(reading.id()), reading.settings(), film.calibration());
        return new LimbRead(
                side,
                reading,
                placed(side, Objects.requireNonNull(measured.limbs().get(side))));
    }

    private static List<Placed> placed(Side side, LimbLandmarks landmarks) {
        return Stream.of(Landmark.values())
                .flatMap(
                        landmark -> landmarks.point(landmark).map(at -> new Placed(side, landmark.code(), at)).stream())
                .toList();
    }
}
