package org.espalier.treatment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.access.SiteId;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.patient.Bone;
import org.espalier.patient.BoneEnd;
import org.espalier.patient.ChildId;
import org.espalier.reading.ReadNumber;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.science.alignment.ChangeLimit;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Angle;
import org.springframework.stereotype.Component;

/** Tells from signed readings which way a physis is bent. What lies within reader error of the target goes no way. */
@Component
class DeformityReader {

    private static final Angle WITHOUT_LIMIT = new Angle(3);

    private final ReadingService readings;
    private final FilmService films;

    DeformityReader(ReadingService readings, FilmService films) {
        this.readings = readings;
        this.films = films;
    }

    private record Seen(LocalDate filmOn, Reading reading, Angle angle) {}

    /** By the latest film up to the day; empty when none was read, and when none tells a direction. */
    Optional<MeasuredDeformity> of(SiteId site, ChildId child, PhysisKey physis, Angle target, LocalDate until) {
        Map<FilmId, LocalDate> days = films.of(child).stream()
                .filter(film ->
                        film.takenOn().filter(day -> !day.isAfter(until)).isPresent())
                .collect(Collectors.toMap(Film::id, film -> film.takenOn().orElseThrow()));
        return quantity(physis).flatMap(quantity -> readings.ofChild(site, child).stream()
                .filter(reading -> !reading.isSuperseded() && days.containsKey(reading.film()))
                .flatMap(reading -> angle(reading, physis, quantity)
                        .map(angle -> new Seen(days.getOrDefault(reading.film(), until), reading, angle))
                        .stream())
                .max(Comparator.comparing(Seen::filmOn)
                        .thenComparing(seen -> seen.reading().signedAt()))
                .flatMap(seen -> deformity(quantity, seen, target)));
    }

    private static Optional<Angle> angle(Reading reading, PhysisKey physis, Quantity quantity) {
        return reading.numbers().stream()
                .filter(number -> number.side() == physis.side() && number.quantity() == quantity)
                .filter(number -> !number.doubtful() && number.value().isPresent())
                .findFirst()
                .map(ReadNumber::value)
                .map(value -> new Angle(value.getAsDouble()));
    }

    private static Optional<Quantity> quantity(PhysisKey physis) {
        if (physis.bone() == Bone.FEMUR && physis.end() == BoneEnd.DISTAL) {
            return Optional.of(Quantity.MLDFA);
        }
        if (physis.bone() == Bone.TIBIA) {
            return Optional.of(physis.end() == BoneEnd.PROXIMAL ? Quantity.MMPTA : Quantity.LDTA);
        }
        return Optional.empty();
    }

    /** A larger lateral angle is varus, a larger medial one valgus. */
    private static Optional<MeasuredDeformity> deformity(Quantity quantity, Seen seen, Angle target) {
        var past = seen.angle().minus(target);
        var limit = ChangeLimit.of(quantity, ChangeLimit.STRAIGHT)
                .map(ChangeLimit::reader)
                .orElse(WITHOUT_LIMIT);
        if (past.abs().compareTo(limit) <= 0) {
            return Optional.empty();
        }
        boolean larger = past.degrees() > 0;
        boolean varus = quantity == Quantity.MMPTA ? !larger : larger;
        return Optional.of(
                new MeasuredDeformity(varus ? Deformity.VARUS : Deformity.VALGUS, seen.angle(), seen.filmOn()));
    }
}
