package org.espalier.interchange;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.espalier.film.FilmId;
import org.espalier.film.FilmService;
import org.espalier.kit.Texts;
import org.espalier.reading.EarlierReadings;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingId;
import org.espalier.reading.ReadingService;
import org.espalier.reading.SignOutcome;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Signed readings, by their landmarks: the numbers follow from them here as everywhere. */
@Component
@Order(7)
class ReadingsPart implements ClinicPart {

    /** Rows that are one reading. */
    private record Key(String number, String film, String reading) {}

    private final ReadingService readings;
    private final EarlierReadings earlier;
    private final FilmService films;
    private final JsonMapper json;

    ReadingsPart(ReadingService readings, EarlierReadings earlier, FilmService films, JsonMapper json) {
        this.readings = readings;
        this.earlier = earlier;
        this.films = films;
        this.json = json;
    }

    @Override
    public void take(Taking taking) {
        taking.rows(ClinicFile.READINGS).stream()
                .collect(Collectors.groupingBy(
                        row -> new Key(row.text("local_number"), row.text("film"), row.text("reading")),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .forEach((key, rows) -> taking.take(rows, () -> take(taking, key, rows)));
    }

    private Effect take(Taking taking, Key key, List<ClinicRow> rows) {
        var first = rows.getFirst();
        var child = taking.child(first);
        var reader = first.cells().name("reader");
        var startedAt = instant(first, "started_at");
        var signedAt = instant(first, "signed_at");
        var film = film(taking, first);
        var secondOf = secondOf(taking, key, first);
        var read = new ReadingRows(rows);
        if (child.isEmpty() || reader.isEmpty() || startedAt.isEmpty() || signedAt.isEmpty() || film.isEmpty()) {
            return Effect.KNOWN;
        }
        var known = readings.ofFilm(film.get()).stream()
                .filter(one -> one.signedAt().equals(signedAt.get())
                        && one.readerName().equals(reader.get()))
                .findFirst();
        if (known.isPresent()) {
            taking.named().put(key(key.film(), key.reading()), known.get().id());
            return Effect.KNOWN;
        }
        var id = new ReadingId(StableIds.of(
                film.get().value(), "reading", reader.get(), signedAt.get().toString()));
        var signed = new EarlierReadings.Signed(
                id,
                film.get(),
                StableIds.of(taking.site().value(), "reader", reader.get()),
                reader.get(),
                startedAt.get(),
                signedAt.get(),
                read.settings(json),
                read.marks(),
                secondOf);
        if (earlier.add(signed) instanceof SignOutcome.Refused(var reason)) {
            throw new RowRefused("item", FileReason.REFUSED, Texts.of(reason));
        }
        taking.named().put(key(key.film(), key.reading()), id);
        return Effect.NEW;
    }

    private static Optional<FilmId> film(Taking taking, ClinicRow row) {
        var name = row.text("film");
        if (taking.named().get(FilmsPart.key(name)) instanceof FilmId film) {
            return Optional.of(film);
        }
        row.cells().refuse("film", FileReason.FILM_NOT_TAKEN, name);
        return Optional.empty();
    }

    private static Optional<ReadingId> secondOf(Taking taking, Key key, ClinicRow row) {
        if (row.cells().isEmpty("second_of")) {
            return Optional.empty();
        }
        if (taking.named().get(key(key.film(), row.text("second_of"))) instanceof ReadingId first) {
            return Optional.of(first);
        }
        row.cells().refuse("second_of", FileReason.FIRST_READING_MISSING, row.text("second_of"));
        return Optional.empty();
    }

    private static Optional<Instant> instant(ClinicRow row, String column) {
        try {
            return Optional.of(Instant.parse(row.text(column)));
        } catch (DateTimeException e) {
            row.cells().refuse(column, FileReason.NOT_AN_INSTANT, row.text(column));
            return Optional.empty();
        }
    }

    private static String key(String film, String reading) {
        return "reading " + film + " " + reading;
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        for (var one : giving.children()) {
            var all = readings.ofChild(giving.site(), one.child().id()).stream()
                    .filter(reading -> !reading.isSuperseded())
                    .collect(Collectors.groupingBy(Reading::film));
            for (var film : FilmsPart.inOrder(films.of(one.child().id()))) {
                add(rows, one.number(), film.bytes().sha256(), all.getOrDefault(film.id(), List.of()));
            }
        }
        return Map.of(ClinicFile.READINGS, rows);
    }

    /** Readings of a film are numbered as they were signed; one that was read again comes before its second. */
    private void add(List<List<String>> rows, String number, String film, List<Reading> all) {
        Map<ReadingId, String> names = new HashMap<>();
        all.stream()
                .sorted(Comparator.comparing(
                                (Reading reading) -> reading.secondOf().isPresent())
                        .thenComparing(Reading::signedAt)
                        .thenComparing(Reading::readerName))
                .forEach(reading -> {
                    var name = Integer.toString(names.size() + 1);
                    names.put(reading.id(), name);
                    var head = List.of(
                            number,
                            film,
                            name,
                            reading.readerName(),
                            reading.startedAt().toString(),
                            reading.signedAt().toString(),
                            reading.secondOf()
                                    .map(first -> names.getOrDefault(first, ""))
                                    .orElse(""));
                    ReadingItems.of(reading.settings(), readings.marks(reading.id()), json)
                            .forEach(item -> rows.add(Stream.concat(head.stream(), item.cells().stream())
                                    .toList()));
                });
    }
}
