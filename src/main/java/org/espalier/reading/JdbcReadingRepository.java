package org.espalier.reading;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.espalier.access.SiteId;
import org.espalier.film.FilmId;
import org.espalier.patient.ChildId;
import org.espalier.science.quantity.Length;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Signed readings with their numbers. */
@Repository
@Transactional
class JdbcReadingRepository {

    private static final String ADD = """
            insert into reading (id, site_id, recorded_site, child_id, film_id, reader, started_at, signed_at, marks,
                limbs,
                calibration, mm_per_px_x, mm_per_px_y, ball_diameter_mm, ball_diameter_px, taken, screws,
                second_of, supersedes, reason)
            values (:id, :site, :site, :child, :film, :reader, :startedAt, :signedAt, cast(:marks as jsonb), :limbs,
                :calibration, :scaleX, :scaleY, :ballMm, :ballPx, cast(:taken as jsonb),
                cast(:screws as jsonb), :secondOf, :supersedes, :reason)
            on conflict do nothing
            """;
    private static final String ADD_NUMBERS = """
            insert into reading_number
                (reading_id, site_id, recorded_site, child_id, side, quantity, value, unit, doubtful)
            select :reading, :site, :site, :child, side, quantity, value, unit, doubtful
            from unnest(:sides, :quantities, :values, :units, :doubtful)
                as number (side, quantity, value, unit, doubtful)
            """;
    private static final String READINGS = """
            select r.id, r.site_id, r.child_id, r.film_id, r.reader, s.name as reader_name, r.started_at, r.signed_at,
                r.limbs, r.calibration, r.mm_per_px_x, r.mm_per_px_y, r.ball_diameter_mm, r.ball_diameter_px,
                r.taken, r.screws, r.second_of, r.supersedes, r.reason, later.id as superseded_by
            from reading r
            join staff s on s.id = r.reader
            left join reading later on later.supersedes = r.id
            """;
    private static final String NUMBERS = """
            select n.reading_id, n.side, n.quantity, n.value, n.doubtful from reading_number n
            """;
    private static final String LATEST_FIRST = " order by r.signed_at desc, r.id desc";
    private static final String BY_ID = READINGS + "where r.id = :id";
    private static final String NUMBERS_BY_ID = NUMBERS + "where n.reading_id = :id";
    private static final String OF_FILM = READINGS + "where r.site_id = :site and r.film_id = :film" + LATEST_FIRST;
    private static final String NUMBERS_OF_FILM = NUMBERS + """
            join reading r on r.id = n.reading_id
            where r.site_id = :site and r.film_id = :film
            """;
    private static final String OF_CHILD = READINGS + "where r.site_id = :site and r.child_id = :child" + LATEST_FIRST;
    private static final String NUMBERS_OF_CHILD = NUMBERS + "where n.site_id = :site and n.child_id = :child";
    private static final String MARKS = "select marks from reading where id = :id";

    private static final String EARLIER_READER = "select earlier_reader(:id, :name)";

    private final JdbcClient jdbc;
    private final JsonMapper json;

    JdbcReadingRepository(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /**
     * Keeps a reading with its numbers; false when it is kept already, or what it supersedes was superseded meanwhile.
     */
    boolean add(Reading reading, Marks marks) {
        boolean added = signed(reading, marks).update() == 1;
        if (added) {
            addNumbers(reading);
        }
        return added;
    }

    private JdbcClient.StatementSpec signed(Reading reading, Marks marks) {
        var scale = reading.calibration().scale();
        return jdbc.sql(ADD)
                .param("id", reading.id().value())
                .param("site", reading.site().value())
                .param("child", reading.child().value())
                .param("film", reading.film().value())
                .param("reader", reading.reader().value())
                .param("startedAt", reading.startedAt().atOffset(ZoneOffset.UTC))
                .param("signedAt", reading.signedAt().atOffset(ZoneOffset.UTC))
                .param("marks", json.writeValueAsString(marks))
                .param("limbs", ReadingRow.limbs(reading.limbs()))
                .param("calibration", reading.calibration().origin().name())
                .param("scaleX", scale.map(s -> s.millimetresPerPixelX()).orElse(null))
                .param("scaleY", scale.map(s -> s.millimetresPerPixelY()).orElse(null))
                .param(
                        "ballMm",
                        reading.calibration()
                                .ballDiameter()
                                .map(Length::millimetres)
                                .orElse(null))
                .param("ballPx", reading.ballPixels().orElse(null))
                .param("taken", json.writeValueAsString(reading.taken()))
                .param("screws", json.writeValueAsString(reading.screws()))
                .param("secondOf", reading.secondOf().map(ReadingId::value).orElse(null))
                .param(
                        "supersedes",
                        reading.supersedes()
                                .map(before -> before.reading().value())
                                .orElse(null))
                .param(
                        "reason",
                        reading.supersedes().map(Reading.Superseding::reason).orElse(null));
    }

    Optional<Reading> find(ReadingId id) {
        return readings(BY_ID, NUMBERS_BY_ID, Map.of("id", id.value())).stream().findFirst();
    }

    List<Reading> ofFilm(SiteId site, FilmId film) {
        return readings(OF_FILM, NUMBERS_OF_FILM, Map.of("site", site.value(), "film", film.value()));
    }

    List<Reading> ofChild(SiteId site, ChildId child) {
        return readings(OF_CHILD, NUMBERS_OF_CHILD, Map.of("site", site.value(), "child", child.value()));
    }

    Marks marks(ReadingId id) {
        return json.readValue(
                jdbc.sql(MARKS).param("id", id.value()).query(String.class).single(), Marks.class);
    }

    /** Makes a reader known who signed elsewhere; the same id is the same reader. */
    UUID earlierReader(UUID id, String name) {
        return jdbc.sql(EARLIER_READER)
                .param("id", id)
                .param("name", name)
                .query(UUID.class)
                .single();
    }

    private void addNumbers(Reading reading) {
        var numbers = reading.numbers();
        jdbc.sql(ADD_NUMBERS)
                .param("reading", reading.id().value())
                .param("site", reading.site().value())
                .param("child", reading.child().value())
                .param("sides", numbers.stream().map(n -> n.side().name()).toArray(String[]::new))
                .param(
                        "quantities",
                        numbers.stream().map(n -> n.quantity().code()).toArray(String[]::new))
                .param(
                        "values",
                        numbers.stream().map(n -> n.value().getAsDouble()).toArray(Double[]::new))
                .param(
                        "units",
                        numbers.stream().map(n -> n.quantity().unit().code()).toArray(String[]::new))
                .param("doubtful", numbers.stream().map(ReadNumber::doubtful).toArray(Boolean[]::new))
                .update();
    }

    /** Readings and their numbers by one statement each, put together here. */
    private List<Reading> readings(String readings, String numbers, Map<String, UUID> about) {
        Map<UUID, List<ReadNumber>> ofReading = new HashMap<>();
        jdbc.sql(numbers).params(about).query(row -> {
            ofReading
                    .computeIfAbsent(row.getObject(1, UUID.class), id -> new ArrayList<>())
                    .add(ReadingRow.number(row));
        });
        return jdbc.sql(readings).params(about).query((row, number) -> ReadingRow.reading(row, json)).list().stream()
                .map(reading ->
                        reading.withNumbers(ofReading.getOrDefault(reading.id().value(), List.of())))
                .toList();
    }
}
