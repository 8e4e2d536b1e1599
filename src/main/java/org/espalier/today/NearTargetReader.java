package org.espalier.today;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.film.FilmOrder;
import org.espalier.film.FilmOrderService;
import org.espalier.film.FilmWish;
import org.espalier.patient.Child;
import org.espalier.patient.ChildId;
import org.espalier.prognosis.Forecast;
import org.espalier.prognosis.PhysisPrognosis;
import org.espalier.prognosis.Prognosis;
import org.espalier.prognosis.PrognosisService;
import org.espalier.science.quantity.Angle;
import org.springframework.stereotype.Component;

/** Says of a child near its target where the growth plate stands, and what is missing to decide. */
@Component
class NearTargetReader {

    private final PrognosisService prognoses;
    private final FilmOrderService orders;

    NearTargetReader(PrognosisService prognoses, FilmOrderService orders) {
        this.prognoses = prognoses;
        this.orders = orders;
    }

    NearTarget of(Child child, JdbcCareTodayRepository.Row row) {
        return new NearTarget(
                child,
                row.day(),
                prognoses.of(child.id()).flatMap(NearTargetReader::first),
                missing(child.id()),
                row.about().equals(JdbcCareTodayRepository.NO_DATE));
    }

    /** As the day to list by has it: of all plates that are in, the one most likely to come first. */
    private static Optional<NearTarget.Plate> first(Prognosis prognosis) {
        return prognosis.physes().stream()
                .filter(physis -> arrival(physis).isPresent())
                .min(Comparator.comparing(physis -> arrival(physis).orElseThrow()))
                .flatMap(physis -> held(physis).map(forecast -> plate(physis, forecast, prognosis.today())));
    }

    private static Optional<LocalDate> arrival(PhysisPrognosis physis) {
        return held(physis).flatMap(forecast -> forecast.arrival().middle());
    }

    private static Optional<Forecast> held(PhysisPrognosis physis) {
        return physis.forecast().filter(Forecast::isPlaced);
    }

    private static NearTarget.Plate plate(PhysisPrognosis physis, Forecast forecast, LocalDate today) {
        var angle = forecast.angle(today);
        var left = Stream.of(angle.low90(), angle.middle(), angle.high90())
                .map(joint -> forecast.corrects().degreesLeft(forecast.site(), joint, forecast.target()))
                .sorted()
                .map(Angle::ofDegrees)
                .toList();
        return new NearTarget.Plate(
                physis.physis(),
                forecast.corrects(),
                left.get(1),
                left.getFirst(),
                left.getLast(),
                forecast.arrival(),
                forecast.films().stream().max(Comparator.naturalOrder()));
    }

    private List<NearTarget.MissingFilm> missing(ChildId child) {
        return orders.of(child).stream()
                .filter(FilmOrder::isOpen)
                .flatMap(NearTargetReader::film)
                .sorted(Comparator.comparing(NearTarget.MissingFilm::forDay))
                .toList();
    }

    private static Stream<NearTarget.MissingFilm> film(FilmOrder order) {
        return order.wish() instanceof FilmWish.Film film
                ? Stream.of(new NearTarget.MissingFilm(film.protocol(), order.askedOn(), order.forDay()))
                : Stream.empty();
    }
}
