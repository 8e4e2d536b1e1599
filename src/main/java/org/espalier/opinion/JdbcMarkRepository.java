package org.espalier.opinion;

import java.sql.Timestamp;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.espalier.reading.Marks;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** What was drawn and read on copies of films. */
@Repository
class JdbcMarkRepository {

    private static final String KEEP = """
            insert into opinion_mark (id, thread_id, film_id, author, marks, at)
            values (:id, :thread, :film, current_staff(), cast(:marks as jsonb), :at)""";

    private static final String LAYERS = """
            select distinct on (m.author) s.name, m.author = current_staff() as mine, m.marks
            from opinion_mark m join staff s on s.id = m.author
            where m.thread_id = :thread and m.film_id = :film order by m.author, m.at desc, m.id desc""";

    private static final String READ = """
            insert into opinion_reading (id, thread_id, film_id, reader, marks, numbers, at)
            values (:id, :thread, :film, current_staff(), cast(:marks as jsonb), cast(:numbers as jsonb), :at)
            on conflict do nothing""";

    private static final String READINGS = """
            select s.name, r.reader = current_staff() as mine, r.numbers
            from opinion_reading r join staff s on s.id = r.reader
            where r.thread_id = :thread and r.film_id = :film order by r.at""";

    private static final TypeReference<List<Drawing>> DRAWINGS = new TypeReference<>() {};
    private static final TypeReference<List<BlindReading.Number>> NUMBERS = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json;

    JdbcMarkRepository(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    /** One person's layer as last kept. */
    record Kept(String name, boolean mine, List<Drawing> drawings) {}

    void keep(UUID id, ThreadId thread, UUID film, List<Drawing> drawings, Instant at) {
        jdbc.sql(KEEP)
                .param("id", id)
                .param("thread", thread.value())
                .param("film", film)
                .param("marks", json.writeValueAsString(drawings))
                .param("at", Timestamp.from(at))
                .update();
    }

    List<Kept> layers(ThreadId thread, UUID film) {
        return jdbc.sql(LAYERS)
                .param("thread", thread.value())
                .param("film", film)
                .query((row, number) -> new Kept(
                        row.getString("name"),
                        row.getBoolean("mine"),
                        json.readValue(row.getString("marks"), DRAWINGS)))
                .list();
    }

    boolean read(UUID id, ThreadId thread, UUID film, Marks marks, List<BlindReading.Number> numbers, Instant at) {
        return jdbc.sql(READ)
                        .param("id", id)
                        .param("thread", thread.value())
                        .param("film", film)
                        .param("marks", json.writeValueAsString(marks))
                        .param("numbers", json.writeValueAsString(numbers))
                        .param("at", Timestamp.from(at))
                        .update()
                == 1;
    }

    /** How the film was read, the first first; those of others only once the caller has read it. */
    List<BlindReading> readings(ThreadId thread, UUID film) {
        return jdbc.sql(READINGS)
                .param("thread", thread.value())
                .param("film", film)
                .query((row, number) -> new BlindReading(
                        row.getString("name"),
                        row.getBoolean("mine"),
                        json.readValue(row.getString("numbers"), NUMBERS)))
                .list();
    }
}
