package org.espalier.interchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.espalier.film.Film;
import org.espalier.film.FilmId;
import org.espalier.film.FilmImages;
import org.espalier.film.FilmKind;
import org.espalier.film.FilmService;
import org.espalier.film.Received;
import org.espalier.kit.Texts;
import org.espalier.patient.ChildId;
import org.espalier.platform.Blobs;
import org.espalier.reading.Reading;
import org.espalier.reading.ReadingService;
import org.espalier.science.alignment.Quantity;
import org.espalier.science.quantity.Side;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Films with their files. A film is its picture: one without a file cannot be taken, and neither can its readings. */
@Component
@Order(3)
class FilmsPart implements ClinicPart {

    private static final String OWN_RECORDS = "as the hospital's own records say";
    private static final Map<Quantity, String> PHYSES = new LinkedHashMap<>();

    static {
        PHYSES.put(Quantity.MLDFA, "distal femur");
        PHYSES.put(Quantity.MMPTA, "proximal tibia");
        PHYSES.put(Quantity.LDTA, "distal tibia");
    }

    private final FilmService films;
    private final FilmImages images;
    private final ReadingService readings;
    private final Blobs blobs;

    FilmsPart(FilmService films, FilmImages images, ReadingService readings, Blobs blobs) {
        this.films = films;
        this.images = images;
        this.readings = readings;
        this.blobs = blobs;
    }

    @Override
    public void take(Taking taking) {
        taking.rows(ClinicFile.FILMS).forEach(row -> taking.take(row, () -> take(taking, row)));
    }

    private Effect take(Taking taking, ClinicRow row) {
        var name = row.cells().name("film");
        var child = taking.child(row);
        Optional<LocalDate> takenOn =
                row.cells().isEmpty("taken_on") ? Optional.empty() : row.cells().date("taken_on");
        var file = taking.folder().film(row.text("file"));
        if (file.isEmpty()) {
            row.cells().refuse("file", FileReason.FILM_FILE_MISSING, row.text("file"), ClinicFolder.FILMS);
        }
        if (name.isEmpty() || child.isEmpty() || file.isEmpty()) {
            return Effect.KNOWN;
        }
        var received = receive(taking, file.get());
        var effect = settle(received, child.get(), takenOn);
        taking.named().put(key(name.get()), film(received));
        return effect;
    }

    private Received receive(Taking taking, Path file) {
        try (var bytes = Files.newInputStream(file)) {
            return films.receive(taking.site(), bytes, file.getFileName().toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static FilmId film(Received received) {
        return switch (received) {
            case Received.Taken(var film) -> film;
            case Received.AlreadyHere(var film) -> film;
            case Received.KeptAside(var film, var reason) ->
                throw new RowRefused("file", FileReason.REFUSED, Texts.of(reason));
            case Received.Refused(var reason) -> throw new RowRefused("file", FileReason.REFUSED, Texts.of(reason));
        };
    }

    private Effect settle(Received received, ChildId child, Optional<LocalDate> takenOn) {
        var film = films.find(film(received)).orElseThrow();
        if (film.child().filter(other -> !other.equals(child)).isPresent()) {
            throw new RowRefused("local_number", FileReason.FILM_OF_ANOTHER_CHILD);
        }
        boolean given = film.child().isPresent();
        boolean otherDay = takenOn.filter(
                        day -> film.takenOn().filter(day::equals).isEmpty())
                .isPresent();
        if (received instanceof Received.AlreadyHere && given && otherDay) {
            throw new RowRefused(
                    "taken_on",
                    FileReason.FILM_ON_ANOTHER_DAY,
                    film.takenOn().map(LocalDate::toString).orElse("?"));
        }
        if (!given || otherDay) {
            films.assign(film.id(), film.version(), child, otherDay ? takenOn.orElseThrow() : null, OWN_RECORDS);
        }
        return received instanceof Received.AlreadyHere && given ? Effect.KNOWN : Effect.NEW;
    }

    static String key(String film) {
        return "film " + film;
    }

    @Override
    public Map<ClinicFile, List<List<String>>> rows(Giving giving) {
        List<List<String>> rows = new ArrayList<>();
        for (var one : giving.children()) {
            var read = readings.ofChild(giving.site(), one.child().id()).stream()
                    .filter(Reading::counts)
                    .collect(Collectors.groupingBy(Reading::film));
            for (var film : inOrder(films.of(one.child().id()))) {
                copy(film, giving.folder());
                rows.add(row(one.number(), film, read.getOrDefault(film.id(), List.of())));
            }
        }
        return Map.of(ClinicFile.FILMS, rows);
    }

    /** By the day and the bytes, which are the same wherever the film is. */
    static List<Film> inOrder(List<Film> films) {
        return films.stream()
                .sorted(Comparator.<Film, String>comparing(
                                film -> film.takenOn().map(LocalDate::toString).orElse(""))
                        .thenComparing(film -> film.bytes().sha256()))
                .toList();
    }

    private void copy(Film film, Path folder) {
        images.open(film.id());
        try {
            Files.createDirectories(folder.resolve(ClinicFolder.FILMS));
            Files.copy(blobs.path(film.bytes()), folder.resolve(fileName(film)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String fileName(Film film) {
        return ClinicFolder.FILMS + "/" + film.bytes().sha256() + (film.kind() == FilmKind.DICOM ? ".dcm" : ".picture");
    }

    private static List<String> row(String number, Film film, List<Reading> read) {
        return List.of(
                film.bytes().sha256(),
                number,
                film.takenOn().map(LocalDate::toString).orElse(""),
                fileName(film),
                read.stream()
                        .flatMap(reading -> reading.limbs().stream())
                        .distinct()
                        .sorted()
                        .map(Side::letter)
                        .collect(Collectors.joining("; ")),
                PHYSES.entrySet().stream()
                        .filter(physis -> read.stream()
                                .flatMap(reading -> reading.numbers().stream())
                                .anyMatch(told -> told.quantity() == physis.getKey()))
                        .map(Map.Entry::getValue)
                        .collect(Collectors.joining("; ")));
    }
}
