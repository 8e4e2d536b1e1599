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
import org.espalier.science.alignment.Landmark;
import org.espalier.science.alignment.LimbLandmarks;
import org.espalier.science.quantity.Angle;
import org.espalier.science.quantity.PixelPoint;
import org.espalier.science.quantity.Side;
import org.springframework.stereotype.Component;

/** Finds the film of a limb that can be cut, and cuts it by the landmarks of the reading that counts. */
@Component
class FilmCuts {

    private static final double BELOW_THE_KNEE = 0.14;
    private static final double HALF_WIDTH = 0.6;

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
     * @throws IllegalArgumentException when there is no such film that the caller may see, no reading of the limb on it, or no
     *     cut can run so
     */
    FilmCut cut(FilmId film, CutRequest request) {
        var shown = films.find(film).orElseThrow(() -> new IllegalArgumentException("No film " + film.value()));
        var measurement = measurement(shown, request.side())
                .orElseThrow(() -> new IllegalArgumentException("No signed reading of this limb on the film"));
        return new FilmCut(
                request.side(),
                landmarks(measurement, request.side()),
                measurement.scale().forAngles(),
                measurement.scale().isInMillimetres(),
                new PixelPoint(request.x1(), request.y1()),
                new PixelPoint(request.x2(), request.y2()),
                new PixelPoint(request.hx(), request.hy()),
                Angle.ofDegrees(request.outwards()));
    }

    private Optional<CutFilm> start(Film film, Side side) {
        return measurement(film, side)
                .map(measurement -> landmarks(measurement, side))
                .flatMap(limb -> start(limb, side))
                .map(request -> new CutFilm(film.id(), film.takenOn().orElseThrow(), side, request));
    }

    private static Optional<CutRequest> start(LimbLandmarks limb, Side side) {
        return FilmCut.middle(limb, Landmark.PLATEAU_MEDIAL, Landmark.PLATEAU_LATERAL)
                .flatMap(shin -> FilmCut.middle(limb, Landmark.PLAFOND_MEDIAL, Landmark.PLAFOND_LATERAL)
                        .flatMap(ankle -> limb.point(Landmark.PLATEAU_LATERAL)
                                .map(lateral -> start(side, shin, ankle, Math.abs(lateral.x() - shin.x())))));
    }

    private static CutRequest start(Side side, PixelPoint shin, PixelPoint ankle, double half) {
        double x = shin.x() + BELOW_THE_KNEE * (ankle.x() - shin.x());
        double y = shin.y() + BELOW_THE_KNEE * (ankle.y() - shin.y());
        double reach = 2 * HALF_WIDTH * Math.max(half, 1);
        return new CutRequest(0, side, x - reach, y, x + reach, y, x, y, 0);
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
