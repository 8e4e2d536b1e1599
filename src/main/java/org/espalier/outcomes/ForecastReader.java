package org.espalier.outcomes;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.espalier.prognosis.FilmAngle;
import org.espalier.prognosis.KeptForecast;
import org.espalier.prognosis.KeptForecasts;
import org.espalier.science.quantity.Side;

/**
 * Holds what was foretold of a limb against a film that came later, while the plate still held. One forecast stands for
 * each limb, so that those of a hospital are independent: the one that looked ahead most nearly half a year.
 */
final class ForecastReader {

    private static final double WANTED_MONTHS = 6;
    private static final double LEAST_MONTHS = 1;

    private final KeptForecasts facts;
    private final ZoneId zone;

    private ForecastReader(KeptForecasts facts, ZoneId zone) {
        this.facts = facts;
        this.zone = zone;
    }

    /** At most one of each limb, the right first. */
    static List<JudgedForecast> of(KeptForecasts facts, ZoneId zone) {
        var reader = new ForecastReader(facts, zone);
        return Stream.of(Side.RIGHT, Side.LEFT)
                .flatMap(side -> reader.nearest(side).stream())
                .toList();
    }

    private Optional<JudgedForecast> nearest(Side side) {
        return facts.forecasts().stream()
                .filter(kept -> kept.physis().side() == side)
                .flatMap(kept -> facts.films(kept.physis()).stream()
                        .filter(film -> !film.on().isAfter(end(kept)))
                        .flatMap(film -> judged(kept, film).stream()))
                .filter(judged -> judged.months() >= LEAST_MONTHS)
                .min(Comparator.<JudgedForecast>comparingDouble(judged -> Math.abs(judged.months() - WANTED_MONTHS))
                        .thenComparing(JudgedForecast::filmOn, Comparator.reverseOrder()));
    }

    private Optional<JudgedForecast> judged(KeptForecast kept, FilmAngle film) {
        return kept.film(film.on())
                .map(foretold -> new JudgedForecast(
                        facts.treatment().child(),
                        kept.physis(),
                        kept.from(),
                        film.on(),
                        !LocalDate.ofInstant(kept.at(), zone).isAfter(film.on()),
                        foretold,
                        kept.left(film.value()),
                        kept.line(film.on())));
    }

    /** The day on which the plate it spoke of held no longer as it did. */
    private LocalDate end(KeptForecast kept) {
        var treatment = facts.treatment();
        return treatment.tethers().stream()
                .filter(tether -> tether.physis().equals(kept.physis()))
                .flatMap(tether -> TetherEnd.all(treatment, tether))
                .map(TetherEnd::on)
                .filter(day -> day.isAfter(kept.plateOn()))
                .min(Comparator.naturalOrder())
                .orElse(treatment.today());
    }
}
