package org.espalier.plan;

import java.util.Comparator;
import java.util.Optional;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.film.FilmState;
import org.espalier.patient.ChildId;
import org.espalier.reading.FilmMeasurement;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Component;

/** Finds the film of a limb that can be cut, and cuts it by the landmarks of the reading that counts. */
@Component
class FilmCuts {

    private final FilmService films;
    private final ReadingService readings;

    FilmCuts(FilmService films, ReadingService readings) {
        this.films = films;
        this.readings = readings;
    }

    /** The latest film from the front with a reading of the limb that counts; empty while there is none. */
    Optional<CutFilm> film(ChildId child, Side side) {
        return films.of(child).stream()
                .filter(film -> film.state() == FilmState.READY)
                .filter(film -> film.takenOn().isPresent())
                .sorted(Comparator.comparing((Film film) -> film.takenOn().orElseThrow())
                        .reversed())
                .flatMap(film -> start(film, side).stream())
                .findFirst();
    }

    /**
     * The limb of a film, cut.
     *
     * @throws IllegalArgumentException when there is no such film that the caller may see, no reading of the limb on
     *     it, or no cut can run so
     */
    FilmCut cut(FilmId film, CutRequest request) {
        var shown = films.find(film).orElseThrow(() -> new IllegalArgumentException("No film " + film.value()));
        var measurement = measurement(shown, request.side())
                .orElseThrow(() -> new IllegalArgumentException("No signed reading of this limb on the film"));
        return new FilmCut(
                limb(measurement, request.side()),
                request.shape(),
                new PixelPoint(request.x1(), request.y1()),
                new PixelPoint(request.x2(), request.y2()),
                new PixelPoint(request.hx(), request.hy()),
                Angle.ofDegrees(request.outwards()));
    }

    private static FilmLimb limb(FilmMeasurement measurement, Side side) {
        return new FilmLimb(
                side,
                landmarks(measurement, side),
                landmarks(measurement, side == Side.RIGHT ? Side.LEFT : Side.RIGHT),
                measurement.scale().forAngles(),
                measurement.scale().isInMillimetres());
    }

    private Optional<CutFilm> start(Film film, Side side) {
        return measurement(film, side)
                .map(measurement -> CutStarts.of(landmarks(measurement, side), side))
                .filter(starts -> !starts.isEmpty())
                .map(starts -> new CutFilm(film.id(), film.takenOn().orElseThrow(), side, starts));
    }

    private Optional<FilmMeasurement> measurement(Film film, Side side) {
        return readings.ofFilm(film.id()).stream()
                .filter(Reading::counts)
                .filter(reading ->
                        reading.limbs().contains(side) && !reading.taken().fromTheSide())
                .findFirst()
                .map(reading ->
                        FilmMeasurement.of(readings.marks(reading.id()), reading.settings(), film.calibration()));
    }

    private static LimbLandmarks landmarks(FilmMeasurement measurement, Side side) {
        return measurement.limbs().getOrDefault(side, LimbLandmarks.none());
    }
}
